package rutbook.ui.rebuild;

import java.util.Optional;
import rutbook.edit.Edit;
import rutbook.edit.EntryEdit;
import rutbook.edit.SessionStart;
import rutbook.notebook.Bike;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Timeline;
import rutbook.ui.Desk;

/** Keeps what is on the bike as its baseline; an older one stays in the notebook. */
final class KeepBaseline {
  private KeepBaseline() {}

  /** The first of a bike, before anything was rebuilt. */
  static Edit first(Desk desk, Bike bike) {
    return edit(desk, bike, desk.text("baseline.first"), Optional.empty());
  }

  /**
   * @param rebuild after which it is kept
   */
  static Edit edit(Desk desk, Bike bike, String reason, Optional<EntryId> rebuild) {
    Timeline timeline = desk.timeline(bike.id());
    return new EntryEdit.Add(
        new Entry.Baseline(
            desk.headToday(bike),
            SessionStart.asLeft(desk.notebook(), bike, desk.today()),
            timeline.sag(End.REAR).flatMap(Entry.SagMeasured::race),
            timeline.sag(End.REAR).flatMap(Entry.SagMeasured::free),
            reason,
            rebuild));
  }
}
