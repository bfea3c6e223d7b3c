package rutbook.reasoning;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.BikeId;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;

/**
 * The answer to "which one setting do I change next": pages and the command line are drawn on this
 * record alone, made by {@link #of}. The record of what the notebook knows of every setting and
 * complaint is {@link Ledger}; what a change that was ridden proved is {@link Verdict}.
 *
 * @param kind what the page is about
 * @param gates what to put right first, in the trade's order
 * @param now what bothers the rider, as expected after all motos, the worst first
 * @param suggestions up to three, the best first; with {@link Kind#LEAVE_ALONE} what could be tried
 *     by a rider who wants more all the same
 * @param ask complaints whose deciding question is still open
 * @param rules how far the rules of the trade hold on this bike
 */
public record NextChange(
    Kind kind,
    List<GateCard> gates,
    List<Bother> now,
    List<Suggestion> suggestions,
    List<Complaint> ask,
    RuleTrust rules) {

  /** How much a gate that stands lowers a chance, as a share of the way to one half. */
  private static final double GATE = 0.1;

  /** What the page is about. */
  public enum Kind {
    /** No moto with a word on feel yet. */
    NOTHING_RIDDEN,
    /** A fault or crash comes first: no suggestions. */
    STOP,
    /** No complaint of 2 or more, or none of 4 or more and nothing that anybody would feel. */
    LEAVE_ALONE,
    /** The suggestions are expected to help. */
    CHANGE,
    /** Nothing looks better, real complaints remain: a small test from which most could come. */
    TEST,
    /** Not a clicker job: real complaints remain that no setting is expected to take away. */
    NO_SETTING_HELPS
  }

  public NextChange {
    gates = List.copyOf(gates);
    now = List.copyOf(now);
    suggestions = List.copyOf(suggestions);
    ask = List.copyOf(ask);
  }

  /**
   * The answer for a bike after all that its notebook holds.
   *
   * @param rules of the trade; the notebook's own changes to them are applied here
   */
  public static NextChange of(Notebook notebook, BikeId bike, RuleBook rules) {
    Timeline timeline = Timeline.of(notebook, bike);
    List<Ride> rides = Ride.of(timeline);
    if (rides.isEmpty()) {
      return new NextChange(
          Kind.NOTHING_RIDDEN, List.of(), List.of(), List.of(), List.of(), RuleTrust.USUAL);
    }
    Ride last = rides.get(rides.size() - 1);
    List<GateCard> gates = Gates.of(timeline, notebook.shelf(), last.session());
    RuleBook book = rules.with(notebook.ruleChanges());
    Sheet sheet = timeline.sheetOn(last.session().day());
    Setup baseline =
        timeline
            .baselineOn(last.session().day())
            .map(Entry.Baseline::setup)
            .orElse(rides.get(0).setup());
    Setup present = timeline.now();
    Reckoning reckoning =
        Reckoning.of(sheet, baseline, present, rides, book, new Likeness(notebook.shelf()));
    Outlook outlook = new Outlook(reckoning, Trials.of(rides, reckoning.settings()), last);
    if (gates.stream().anyMatch(GateCard::blocks)) {
      return new NextChange(Kind.STOP, gates, outlook.now(), List.of(), List.of(), outlook.rules());
    }
    List<Complaint> ask =
        outlook.now().stream()
            .filter(Bother::isReal)
            .map(Bother::complaint)
            .filter(each -> Questions.open(each, rides, book))
            .toList();
    boolean untried = rides.stream().allMatch(ride -> ride.moto().changes().isEmpty());
    NextChange found = found(new Choosing(sheet, last, present, outlook, untried), outlook);
    List<Suggestion> less =
        found.suggestions().stream()
            .map(each -> each.lessSure(1 - Math.pow(1 - GATE, gates.size())))
            .toList();
    return new NextChange(found.kind(), gates, outlook.now(), less, ask, outlook.rules());
  }

  private static NextChange found(Choosing choosing, Outlook outlook) {
    List<Suggestion> best = choosing.best();
    boolean worthIt = !best.isEmpty() && best.get(0).net() >= Choosing.LEAST_GAIN;
    boolean bothers = outlook.now().stream().anyMatch(Bother::isReal);
    Kind kind = Kind.LEAVE_ALONE;
    if (bothers && worthIt) {
      kind = Kind.CHANGE;
    } else if (outlook.discomfort() >= Choosing.REAL_COMPLAINTS && !worthIt) {
      boolean stays = outlook.staying() >= outlook.discomfort() / 2;
      best = stays ? List.of() : choosing.tests();
      kind = best.isEmpty() ? Kind.NO_SETTING_HELPS : Kind.TEST;
    } else if (!best.isEmpty() && outlook.now().stream().anyMatch(Bother::isBad)) {
      kind = Kind.CHANGE;
    }
    return new NextChange(kind, List.of(), outlook.now(), best, List.of(), outlook.rules());
  }

  public Optional<Suggestion> best() {
    return suggestions.stream().findFirst();
  }
}
