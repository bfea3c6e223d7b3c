package rutbook.reasoning;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rutbook.notebook.Bite;
import rutbook.notebook.Feel;
import rutbook.notebook.When;

/** The deciding questions: hit-and-deflect or hit-and-sink, first bump or later bumps. */
final class Questions {
  private Questions() {}

  static Optional<Feel> lastAnswered(Complaint complaint, List<Ride> rides) {
    for (int i = rides.size() - 1; i >= 0; i--) {
      Feel feel = rides.get(i).feel().get(complaint);
      if (feel != null && (feel.bite().isPresent() || feel.when().isPresent())) {
        return Optional.of(feel);
      }
    }
    return Optional.empty();
  }

  /** How far a rule counts: 1 when its condition is met, 0 when not, a half while unanswered. */
  static double share(Rule rule, Optional<Feel> answered) {
    double share = 1;
    if (rule.bite().isPresent()) {
      share *= match(answered.flatMap(Feel::bite), rule.bite().get());
    }
    if (rule.when().isPresent()) {
      share *= match(answered.flatMap(Feel::when), rule.when().get());
    }
    return share;
  }

  /**
   * What rules say together of a dose, with the chance of each sum: one while every question is
   * answered, else one for each answer that could be given.
   */
  static SortedMap<Double, Double> sizes(List<Rule> rules, Optional<Feel> answered) {
    List<Bite> bites = answered.flatMap(Feel::bite).map(List::of).orElse(List.of(Bite.values()));
    List<When> whens = answered.flatMap(Feel::when).map(List::of).orElse(List.of(When.values()));
    SortedMap<Double, Double> sizes = new TreeMap<>();
    for (Bite bite : bites) {
      for (When when : whens) {
        double size =
            rules.stream()
                .filter(rule -> rule.bite().map(bite::equals).orElse(true))
                .filter(rule -> rule.when().map(when::equals).orElse(true))
                .mapToDouble(Rule::size)
                .sum();
        sizes.merge(size, 1.0 / (bites.size() * whens.size()), Double::sum);
      }
    }
    return sizes;
  }

  private static <T> double match(Optional<T> answer, T wanted) {
    return answer.map(each -> each.equals(wanted) ? 1.0 : 0.0).orElse(0.5);
  }

  /** Whether an answer would change which rules hold. */
  static boolean open(Complaint complaint, List<Ride> rides, RuleBook book) {
    Optional<Feel> answered = lastAnswered(complaint, rides);
    return book.rules().stream()
        .filter(rule -> rule.concerns(complaint))
        .mapToDouble(rule -> share(rule, answered))
        .anyMatch(share -> share > 0 && share < 1);
  }
}
