package rutbook.json;

import rutbook.notebook.Entry;

/** Every kind of entry. */
final class EntriesShape extends KindsShape<Entry> {
  EntriesShape() {
    add(Entry.Session.class, new SessionShape());
    add(Entry.Adjusted.class, new AdjustedShape());
    add(Entry.SagMeasured.class, new SagMeasuredShape());
    add(Entry.RebuildJob.class, new RebuildShape());
    add(Entry.Baseline.class, new BaselineShape());
    add(Entry.MeterChange.class, new MeterChangeShape());
    add(Entry.Event.class, new EventShape());
    add(Entry.Serviced.class, new ServicedShape());
    add(Entry.GateDismissed.class, new GateDismissedShape());
    add(Entry.HandedOver.class, new HandedOverShape());
    add(Entry.Advice.class, new AdviceShape());
  }
}
