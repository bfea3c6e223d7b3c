package rutbook.reasoning;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import rutbook.notebook.BikeId;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;

/**
 * The answer to "which one setting do I change next".
 *
 * @param gates what to put right first
 * @param now what bothers the rider, as expected after all motos
 * @param suggestions up to three, the best first
 * @param ask complaints whose deciding question is still open
 */
public record NextChange(
    Kind kind,
    List<GateCard> gates,
    List<Effects> now,
    List<Suggestion> suggestions,
    List<Complaint> ask) {

  /** What the page is about. */
  public enum Kind {
    NOTHING_RIDDEN,
    STOP,
    LEAVE_ALONE,
    CHANGE,
    NO_SETTING_HELPS
  }

  public NextChange {
    gates = List.copyOf(gates);
    now = List.copyOf(now);
    suggestions = List.copyOf(suggestions);
    ask = List.copyOf(ask);
  }

  /** The answer for a bike after all that its notebook holds. */
  public static NextChange of(Notebook notebook, BikeId bike, RuleBook rules) {
    Timeline timeline = Timeline.of(notebook, bike);
    List<Ride> rides = Ride.of(timeline);
    if (rides.isEmpty()) {
      return new NextChange(Kind.NOTHING_RIDDEN, List.of(), List.of(), List.of(), List.of());
    }
    Ride last = rides.get(rides.size() - 1);
    List<GateCard> gates = Gates.of(timeline, last.session());
    RuleBook book = rules.with(notebook.ruleChanges());
    Sheet sheet = timeline.sheetOn(last.session().day());
    Setup reference =
        timeline
            .baselineOn(last.session().day())
            .map(Entry.Baseline::setup)
            .orElse(rides.get(0).setup());
    Setup present = timeline.now();
    Reckoning reckoning = Reckoning.of(sheet, reference, present, rides, book);
    List<Effects> now = List.of();
    if (gates.stream().anyMatch(GateCard::blocks)) {
      return new NextChange(Kind.STOP, gates, now, List.of(), List.of());
    }
    List<Complaint> ask =
        now.stream()
            .filter(each -> each.here() >= Choosing.WORTH_A_CHANGE)
            .map(Effects::complaint)
            .filter(each -> Questions.open(each, rides, book))
            .toList();
    Choosing choosing = new Choosing(sheet, last, present, reckoning);
    if (!Boolean.getBoolean("finer") && !choosing.anythingBothers()) {
      return new NextChange(Kind.LEAVE_ALONE, gates, now, List.of(), ask);
    }
    List<Suggestion> best = choosing.best();
    Kind kind =
        !best.isEmpty()
            ? Kind.CHANGE
            : choosing.discomfort() >= Choosing.REAL_COMPLAINTS
                ? Kind.NO_SETTING_HELPS
                : Kind.LEAVE_ALONE;
    return new NextChange(kind, gates, now, best, ask);
  }

  private static List<Effects> effects(
      Timeline timeline, List<Ride> rides, Ride last, RuleBook book) {
    Sheet sheet = timeline.sheetOn(last.session().day());
    List<Setting> settings =
        sheet.settings().stream().filter(each -> Doses.dose(each).isPresent()).toList();
    Setup reference =
        timeline
            .baselineOn(last.session().day())
            .map(Entry.Baseline::setup)
            .orElse(rides.get(0).setup());
    TreeSet<Complaint> complaints = new TreeSet<>();
    rides.forEach(ride -> complaints.addAll(ride.feel().keySet()));
    return complaints.stream()
        .map(each -> Effects.of(each, settings, reference, rides, book))
        .toList();
  }

  public Optional<Suggestion> best() {
    return suggestions.stream().findFirst();
  }
}
