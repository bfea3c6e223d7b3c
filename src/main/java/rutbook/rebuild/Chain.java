package rutbook.rebuild;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rutbook.notebook.StepId;

/**
 * Adds steps one after the other to a graph under construction; a branch goes on beside it, and a
 * join waits for several.
 */
final class Chain {
  private final Map<StepId, Step> graph;
  private Set<StepId> ends;

  private Chain(Map<StepId, Step> graph, Set<StepId> ends) {
    this.graph = graph;
    this.ends = ends;
  }

  static Chain start() {
    return new Chain(new LinkedHashMap<>(), Set.of());
  }

  /** The step, after all that this chain ends with now. */
  Chain then(Step step) {
    if (graph.putIfAbsent(step.id(), step.after(ends)) != null) {
      throw new IllegalArgumentException("step twice: " + step.id());
    }
    ends = Set.of(step.id());
    return this;
  }

  /** Steps in no order among themselves, each after all that this chain ends with now. */
  void together(List<Step> steps) {
    if (steps.isEmpty()) {
      return;
    }
    Set<StepId> before = ends;
    Set<StepId> next = new LinkedHashSet<>();
    for (Step step : steps) {
      ends = before;
      then(step);
      next.add(step.id());
    }
    ends = next;
  }

  Chain branch() {
    return new Chain(graph, ends);
  }

  /** Goes on only when the others have ended too. */
  void joined(List<Chain> others) {
    Set<StepId> all = new LinkedHashSet<>(ends);
    others.forEach(other -> all.addAll(other.ends));
    ends = all;
  }

  List<Step> steps() {
    return List.copyOf(graph.values());
  }
}
