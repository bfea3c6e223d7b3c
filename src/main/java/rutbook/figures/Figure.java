package rutbook.figures;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** A figure with what was assumed for it, or what it needs before there can be one. */
public sealed interface Figure<T> {
  /** There is one. */
  record Of<T>(T value, Set<Assumed> assumed) implements Figure<T> {
    public Of {
      assumed = assumed.isEmpty() ? Set.of() : Set.copyOf(assumed);
    }
  }

  /** There is none, and why; never an empty list. */
  record Lacks<T>(List<Need> needs) implements Figure<T> {
    public Lacks {
      needs = List.copyOf(needs);
      if (needs.isEmpty()) {
        throw new IllegalArgumentException("no figure, and no reason for it");
      }
    }
  }

  static <T> Figure<T> of(T value) {
    return new Of<>(value, Set.of());
  }

  static <T> Figure<T> lacks(Need need) {
    return new Lacks<>(List.of(need));
  }

  default Optional<T> found() {
    return this instanceof Of<T> found ? Optional.of(found.value()) : Optional.empty();
  }

  /** What is in the way; empty when there is a figure. */
  default List<Need> needs() {
    return this instanceof Lacks<T> lacking ? lacking.needs() : List.of();
  }

  /** What was assumed; empty when there is no figure. */
  default Set<Assumed> assumed() {
    return this instanceof Of<T> found ? found.assumed() : Set.of();
  }

  default boolean estimate() {
    return !assumed().isEmpty();
  }

  /** Another figure reckoned from this one, under the same assumptions. */
  default <R> Figure<R> map(Function<? super T, ? extends R> reckoning) {
    return then(value -> of(reckoning.apply(value)));
  }

  /** Another figure that may need or assume more. */
  default <R> Figure<R> then(Function<? super T, Figure<R>> reckoning) {
    if (!(this instanceof Of<T> found)) {
      return new Lacks<>(needs());
    }
    Figure<R> next = reckoning.apply(found.value());
    if (!(next instanceof Of<R> reached)) {
      return next;
    }
    Set<Assumed> both = new LinkedHashSet<>(found.assumed());
    both.addAll(reached.assumed());
    return new Of<>(reached.value(), both);
  }
}
