package rutbook.rebuild;

import java.util.List;
import rutbook.notebook.Job;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;

/** Supplies what curves, oils and the rider's own motos say about a plan. */
public interface Advisor {
  /** Knows nothing: the plan stands without remarks. */
  Advisor SILENT =
      new Advisor() {
        @Override
        public List<Remark> onShortfall(Sheet sheet, Setup now, Shortfall shortfall) {
          return List.of();
        }

        @Override
        public List<Remark> onRenewed(Sheet sheet, Setup baseline, Job job) {
          return List.of();
        }
      };

  /**
   * What a shortfall does, and the nearest setting that can make it up. A target beyond the limits
   * of the sheet is held by whoever asks.
   */
  List<Remark> onShortfall(Sheet sheet, Setup now, Shortfall shortfall);

  /** What new oil or parts do, said before the ride and never turned into clicks. */
  List<Remark> onRenewed(Sheet sheet, Setup baseline, Job job);
}
