package rutbook.rebuild;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rutbook.notebook.Side;
import rutbook.notebook.StepId;

/**
 * Puts a graph of steps into the order of work: every step after its prerequisites and, where these
 * leave a choice, one leg completely and then the other, and the floor before the stand.
 */
final class Habits {
  private Habits() {}

  /**
   * A topological order of the steps, the same for the same steps in any order of arrival but for
   * steps that the habits do not tell apart, which keep their order.
   *
   * @throws IllegalArgumentException when a prerequisite is missing or the steps go round in
   *     circles
   */
  static List<Step> inOrder(List<Step> steps) {
    Map<StepId, Step> known = new HashMap<>();
    Map<StepId, Integer> arrival = new HashMap<>();
    for (Step step : steps) {
      known.put(step.id(), step);
      arrival.put(step.id(), arrival.size());
    }
    requireKnown(steps, known.keySet());
    Comparator<Step> habit =
        Comparator.comparing(Step::place)
            .thenComparing(Step::kind)
            .thenComparing(step -> step.leg().map(Side::ordinal).orElse(-1))
            .thenComparing(step -> arrival.get(step.id()));
    List<Step> ordered = new ArrayList<>();
    Set<StepId> done = new HashSet<>();
    Set<Step> waiting = new LinkedHashSet<>(steps);
    Optional<Side> leg = Optional.empty();
    while (!waiting.isEmpty()) {
      Step next =
          waiting.stream()
              .filter(step -> done.containsAll(step.after()))
              .min(sameLegFirst(leg).thenComparing(habit))
              .orElseThrow(() -> new IllegalArgumentException("steps in a circle: " + waiting));
      ordered.add(next);
      done.add(next.id());
      waiting.remove(next);
      leg = next.leg();
    }
    return List.copyOf(ordered);
  }

  private static Comparator<Step> sameLegFirst(Optional<Side> leg) {
    return Comparator.comparing(step -> leg.isEmpty() || !step.leg().equals(leg));
  }

  private static void requireKnown(List<Step> steps, Set<StepId> known) {
    for (Step step : steps) {
      for (StepId before : step.after()) {
        if (!known.contains(before)) {
          throw new IllegalArgumentException(step.id() + " waits for unknown " + before);
        }
      }
    }
  }
}
