package rutbook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Bounds;
import rutbook.notebook.Due;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Hours;
import rutbook.notebook.Legs;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.units.Amount;
import rutbook.units.Duration;

/** What of a bike wants attention, in the order in which it is put right. */
public final class BikeCheck {
  private BikeCheck() {}

  /** Readings outside limits first, then legs, readings, sag, service and the notebook's chain. */
  public static List<Finding> of(Timeline timeline) {
    Sheet sheet = timeline.bike().latestSheet();
    Setup now = timeline.now();
    List<Finding> findings = new ArrayList<>();
    addOutside(findings, sheet, now);
    addLegs(findings, timeline, sheet, now);
    addUnknown(findings, sheet, now);
    addSag(findings, timeline, sheet);
    addService(findings, timeline, sheet);
    Break.in(timeline).forEach(at -> findings.add(new Finding.BrokenChain(at)));
    return findings;
  }

  private static void addOutside(List<Finding> findings, Sheet sheet, Setup now) {
    for (Setting setting : sheet.settings()) {
      Optional<Placed> placed = now.placed(setting.id());
      if (placed.isPresent() && !Bounds.isInside(sheet, setting, placed.get().reading())) {
        findings.add(
            new Finding.OutsideLimits(setting, placed.get().reading(), sheet.limits(setting)));
      }
    }
  }

  private static void addLegs(List<Finding> findings, Timeline timeline, Sheet sheet, Setup now) {
    Optional<Entry.Baseline> baseline = timeline.baseline();
    for (Setting setting : sheet.settings()) {
      now.reading(setting.id())
          .filter(reading -> Legs.differ(setting, reading, meant(baseline, setting)))
          .ifPresent(reading -> findings.add(new Finding.LegsApart(setting, reading)));
    }
  }

  private static Optional<Reading> meant(Optional<Entry.Baseline> baseline, Setting setting) {
    return baseline.flatMap(each -> Legs.meant(each.setup(), setting));
  }

  private static void addUnknown(List<Finding> findings, Sheet sheet, Setup now) {
    for (Setting setting : sheet.settings()) {
      Optional<Placed> placed = now.placed(setting.id());
      if (placed.isEmpty()) {
        findings.add(new Finding.NoReading(setting));
      } else if (!placed.get().reading().isKnown()) {
        findings.add(new Finding.NotKnown(setting, placed.get().reading()));
      }
    }
  }

  private static void addSag(List<Finding> findings, Timeline timeline, Sheet sheet) {
    for (End end : List.of(End.REAR, End.FRONT)) {
      for (SagKind kind : SagKind.values()) {
        Optional<Range> window = kind.window(sheet.parts().sag(), end);
        if (window.isPresent()) {
          addSag(findings, timeline, end, kind, window.get());
        }
      }
    }
  }

  /** The newest measurement that has this sag: race and free are often measured apart. */
  private static void addSag(
      List<Finding> findings, Timeline timeline, End end, SagKind kind, Range window) {
    Optional<Entry.SagMeasured> newest =
        timeline.entries(Entry.SagMeasured.class).stream()
            .filter(sag -> sag.end() == end && measured(sag, kind).isPresent())
            .reduce((earlier, later) -> later);
    if (newest.isEmpty()) {
      findings.add(new Finding.SagNotMeasured(end, kind));
      return;
    }
    Amount amount = measured(newest.get(), kind).orElseThrow();
    if (!window.contains(amount)) {
      findings.add(new Finding.SagOut(end, kind, amount, window, newest.get().day()));
    }
  }

  private static Optional<Amount> measured(Entry.SagMeasured sag, SagKind kind) {
    return kind == SagKind.RACE ? sag.race() : sag.free();
  }

  private static void addService(List<Finding> findings, Timeline timeline, Sheet sheet) {
    Hours hours = timeline.hours();
    for (ServiceItem item : sheet.services()) {
      double since = hours.since(item);
      switch (Due.of(since, item.interval().doubleIn(Duration.HOUR))) {
        case NOT_YET -> {}
        case NEARLY -> findings.add(new Finding.ServiceNear(item, since));
        case DUE, OVERDUE ->
            findings.add(new Finding.ServiceDue(item, since, hours.everDone(item)));
      }
    }
  }
}
