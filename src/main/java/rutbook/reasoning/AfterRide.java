package rutbook.reasoning;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.notebook.BikeId;
import rutbook.notebook.Feel;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;

/**
 * The one question after a moto with a proposal in it: better, the same or worse where it was meant
 * to help, what that proves so far, and what can follow. What was rated already is not asked again.
 *
 * @param asked what it was meant to help, as it was before and as it is said to be now
 * @param advised the steps there are, the advised one first; none before it is ridden
 */
public record AfterRide(
    RiddenProposal ridden, List<Asked> asked, Verdict verdict, List<Step> advised) {
  /** So many complaints are asked about at most. */
  public static final int MOST_ASKED = 3;

  /** So far back is looked for how bad it was before. */
  private static final int MOTOS_BACK = 3;

  /** What can follow. */
  public enum Step {
    /** Ride one moto as it was before, which is what tells. */
    GO_BACK,
    /** Ride it once more as it is. */
    ONE_MORE,
    /** It stays; the question is closed. */
    KEEP,
    /** Having gone back for a moto: set it again and keep it. */
    SET_AGAIN,
    /** Having gone back for a moto: leave it there; the question is closed. */
    LEAVE_BACK
  }

  /**
   * A complaint that the change was meant to help.
   *
   * @param before the worst feel of it in the last moto before the change that mentions it, 1 to 5
   * @param now the same in the latest moto, if it is mentioned there
   */
  public record Asked(Complaint complaint, Feel before, Optional<Feel> now) {}

  public AfterRide {
    asked = List.copyOf(asked);
    advised = List.copyOf(advised);
  }

  /** Whether something it was meant to help is not rated since. */
  public boolean hasOpenQuestion() {
    return ridden.isRidden() && asked.stream().anyMatch(each -> each.now().isEmpty());
  }

  /** Of a bike; empty when no proposal waits for its answer. */
  public static Optional<AfterRide> of(Notebook notebook, BikeId bike, RuleBook rules) {
    Timeline timeline = Timeline.of(notebook, bike);
    return RiddenProposal.open(timeline)
        .map(ridden -> of(timeline, ridden, meant(notebook, ridden, rules)));
  }

  /**
   * @param meant what the change was meant to help, see {@link #meant}
   */
  public static AfterRide of(Timeline timeline, RiddenProposal ridden, List<Complaint> meant) {
    List<Ride> before = before(timeline, ridden);
    Map<Complaint, Feel> now = Ride.greatest(ridden.last());
    List<Asked> all =
        meant.stream()
            .flatMap(
                each ->
                    rated(before, each).stream()
                        .map(was -> new Asked(each, was, Optional.ofNullable(now.get(each)))))
            .filter(each -> each.before().severity() > 0)
            .toList();
    List<Asked> asked = worthAsking(all).stream().limit(MOST_ASKED).toList();
    List<Complaint> compared =
        asked.stream().filter(each -> each.now().isPresent()).map(Asked::complaint).toList();
    Verdict verdict =
        Verdict.of(timeline, ridden.session(), ridden.at(), ridden.without(), compared);
    return new AfterRide(ridden, asked, verdict, steps(ridden, verdict));
  }

  /** What was a real complaint; where none was, the small ones. */
  private static List<Asked> worthAsking(List<Asked> all) {
    List<Asked> real =
        all.stream().filter(each -> each.before().severity() >= Choosing.WORTH_A_CHANGE).toList();
    return real.isEmpty() ? all : real;
  }

  /**
   * What the change was meant to help, the most first: what the reasoning expected of it then, or
   * for a change that it would not have proposed, what bothered then and a rule speaks of. It
   * depends on the motos before the change alone, and takes as long as the next change itself.
   */
  public static List<Complaint> meant(Notebook notebook, RiddenProposal ridden, RuleBook rules) {
    BikeId bike = ridden.session().bike();
    Notebook then = ridden.before(notebook);
    Optional<Suggestion> same =
        NextChange.of(then, bike, rules).suggestions().stream()
            .filter(each -> each.setting().id().equals(ridden.setting().id()))
            .filter(each -> each.to().sameAs(ridden.proposal().to()))
            .findFirst();
    return same.map(Suggestion::helped)
        .filter(each -> !each.isEmpty())
        .orElseGet(() -> spokenOf(Timeline.of(then, bike), ridden, rules));
  }

  private static List<Complaint> spokenOf(
      Timeline timeline, RiddenProposal ridden, RuleBook rules) {
    List<Ride> rides = Ride.of(timeline);
    List<Ride> recent = rides.subList(Math.max(0, rides.size() - MOTOS_BACK), rides.size());
    double doses =
        Doses.of(ridden.setting(), ridden.proposal().to()).orElse(0.0)
            - Doses.of(ridden.setting(), ridden.proposal().from()).orElse(0.0);
    List<Complaint> felt =
        recent.stream()
            .flatMap(ride -> ride.feel().keySet().stream())
            .distinct()
            .filter(each -> severity(recent, each) >= Choosing.WORTH_A_CHANGE)
            .sorted(Comparator.comparingInt(each -> -severity(recent, each)))
            .toList();
    List<Complaint> ruled =
        felt.stream()
            .filter(
                each ->
                    rules
                        .rule(each, ridden.setting(), Questions.lastAnswered(each, rides))
                        .filter(rule -> rule.size() * doses < 0)
                        .isPresent())
            .toList();
    return ruled.isEmpty() ? felt : ruled;
  }

  private static int severity(List<Ride> rides, Complaint complaint) {
    return rated(rides, complaint).map(Feel::severity).orElse(0);
  }

  /** The last rides before the change, oldest first. */
  private static List<Ride> before(Timeline timeline, RiddenProposal ridden) {
    List<Ride> before =
        Ride.of(timeline).stream()
            .filter(
                ride ->
                    !ride.session().id().equals(ridden.session().id())
                        || ride.order() < ridden.at())
            .toList();
    return before.subList(Math.max(0, before.size() - MOTOS_BACK), before.size());
  }

  private static Optional<Feel> rated(List<Ride> rides, Complaint complaint) {
    return rides.stream()
        .flatMap(ride -> Optional.ofNullable(ride.feel().get(complaint)).stream())
        .reduce((earlier, later) -> later);
  }

  private static List<Step> steps(RiddenProposal ridden, Verdict verdict) {
    if (!ridden.isRidden()) {
      return List.of();
    }
    Verdict.Outcome outcome = verdict.outcome();
    if (ridden.isOn()) {
      return switch (outcome) {
        case CONFIRMED -> List.of(Step.KEEP, Step.GO_BACK, Step.ONE_MORE);
        case NOT_RIDDEN ->
            ridden.between().isPresent()
                ? List.of(Step.GO_BACK, Step.KEEP, Step.ONE_MORE)
                : List.of(Step.ONE_MORE, Step.GO_BACK, Step.KEEP);
        case NO_DIFFERENCE -> List.of(Step.ONE_MORE, Step.GO_BACK, Step.KEEP);
        case BETTER, WORSE, NOT_THE_CHANGE -> List.of(Step.GO_BACK, Step.KEEP, Step.ONE_MORE);
      };
    }
    return outcome == Verdict.Outcome.CONFIRMED || outcome == Verdict.Outcome.BETTER
        ? List.of(Step.SET_AGAIN, Step.LEAVE_BACK, Step.ONE_MORE)
        : List.of(Step.LEAVE_BACK, Step.SET_AGAIN, Step.ONE_MORE);
  }
}
