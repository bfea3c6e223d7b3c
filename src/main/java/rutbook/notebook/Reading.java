package rutbook.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rutbook.units.Amount;

/** The value of a setting: one, or one per leg. */
public sealed interface Reading {
  record One(Value value) implements Reading {}

  record Pair(Value left, Value right) implements Reading {}

  static Reading of(Amount amount) {
    return new One(Value.of(amount));
  }

  static Reading of(Amount left, Amount right) {
    return new Pair(Value.of(left), Value.of(right));
  }

  /** Both legs the same. */
  static Reading bothLegs(Amount amount) {
    return of(amount, amount);
  }

  static Reading unknown(Carrier carrier, WhyUnknown why) {
    Value value = new Value.Unknown(why);
    return carrier == Carrier.PAIR ? new Pair(value, value) : new One(value);
  }

  /** One value, or left then right. */
  default List<Value> values() {
    return this instanceof Pair pair
        ? List.of(pair.left(), pair.right())
        : List.of(((One) this).value());
  }

  /** The known amounts, left first. */
  default List<Amount> amounts() {
    if (this instanceof One one) {
      return one.value().known().map(List::of).orElse(List.of());
    }
    List<Amount> known = new ArrayList<>(2);
    for (Value value : values()) {
      value.known().ifPresent(known::add);
    }
    return List.copyOf(known);
  }

  default boolean isKnown() {
    return amounts().size() == values().size();
  }

  /** Whether two known legs differ. */
  default boolean legsDiffer() {
    List<Amount> amounts = amounts();
    return amounts.size() == 2 && !amounts.get(0).sameQuantity(amounts.get(1));
  }

  /** The value of the reading, or of one leg of it. */
  default Value leg(Side side) {
    return this instanceof Pair pair
        ? (side == Side.LEFT ? pair.left() : pair.right())
        : ((One) this).value();
  }

  /** The reading with every amount replaced; what is unknown stays unknown. */
  default Reading map(Function<Amount, Amount> change) {
    return this instanceof Pair pair
        ? new Pair(mapped(pair.left(), change), mapped(pair.right(), change))
        : new One(mapped(((One) this).value(), change));
  }

  private static Value mapped(Value value, Function<Amount, Amount> change) {
    return value.known().<Value>map(amount -> Value.of(change.apply(amount))).orElse(value);
  }

  /** Whether both say the same quantities, whatever unit they were written in. */
  default boolean sameAs(Reading other) {
    List<Value> mine = values();
    List<Value> theirs = other.values();
    if (mine.size() != theirs.size()) {
      return false;
    }
    for (int i = 0; i < mine.size(); i++) {
      Optional<Amount> a = mine.get(i).known();
      Optional<Amount> b = theirs.get(i).known();
      boolean same =
          a.isPresent() && b.isPresent()
              ? a.get().dimension() == b.get().dimension() && a.get().sameQuantity(b.get())
              : a.isEmpty() && b.isEmpty();
      if (!same) {
        return false;
      }
    }
    return true;
  }
}
