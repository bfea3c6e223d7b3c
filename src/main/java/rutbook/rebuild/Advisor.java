package rutbook.rebuild;

import java.util.List;
import rutbook.notebook.Job;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;

/** Supplies what curves, oils and the rider's own motos say about a plan. */
public interface Advisor {
  /** Knows nothing: the plan stands without remarks. */
  Advisor SILENT =
      new Advisor() {
        @Override
        public List<Remark> onShortfall(
            Sheet sheet, Setup reached, Setting setting, Reading wanted) {
          return List.of();
        }

        @Override
        public List<Remark> onRenewed(Sheet sheet, Setup baseline, Job job) {
          return List.of();
        }
      };

  /**
   * What holding a setting inside its limits does, and the nearest other setting that can make it
   * up. A target beyond the limits of the sheet is held by whoever asks.
   *
   * @param reached the setup at the end of the way back, with the setting as it is held
   * @param wanted what the baseline wants of it, on each leg
   */
  List<Remark> onShortfall(Sheet sheet, Setup reached, Setting setting, Reading wanted);

  /** What new oil or parts do, said before the ride and never turned into clicks. */
  List<Remark> onRenewed(Sheet sheet, Setup baseline, Job job);
}
