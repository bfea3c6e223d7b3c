package rutbook.rebuild;

import java.util.Optional;
import rutbook.notebook.Entered;
import rutbook.notebook.Reading;
import rutbook.units.Dimension;
import rutbook.units.Unit;

/**
 * What a step wants entered: a tick, a count or a measure, in which unit, for one leg or both, and
 * whether the instrument, or what there is to say of it, is asked for.
 */
public record Ask(
    Form form, Optional<Unit> unit, boolean bothLegs, boolean instrument, boolean words) {
  /** The form of an answer. */
  public enum Form {
    TICK,
    COUNT,
    MEASURE
  }

  public static final Ask TICK = new Ask(Form.TICK, Optional.empty(), false, false, false);

  /** A tick with a few words. */
  public static final Ask WORDS = new Ask(Form.TICK, Optional.empty(), false, false, true);

  public Ask {
    if ((form == Form.TICK) != unit.isEmpty()) {
      throw new IllegalArgumentException("unit of a " + form + ": " + unit);
    }
  }

  public static Ask count(Unit unit, boolean bothLegs) {
    return new Ask(Form.COUNT, Optional.of(unit), bothLegs, false, false);
  }

  public static Ask measure(Unit unit, boolean bothLegs) {
    return new Ask(Form.MEASURE, Optional.of(unit), bothLegs, false, false);
  }

  public Ask withInstrument() {
    return new Ask(form, unit, bothLegs, true, words);
  }

  /** Whether an entry answers this; a step may always be skipped with a reason. */
  public boolean accepts(Entered entered) {
    if (entered instanceof Entered.Skipped) {
      return true;
    }
    Optional<Reading> reading = reading(entered);
    if (form == Form.TICK || reading.isEmpty()) {
      return form == Form.TICK && reading.isEmpty();
    }
    boolean counted = entered instanceof Entered.Counted;
    Dimension wanted = unit.orElseThrow().dimension();
    return counted == (form == Form.COUNT)
        && (reading.get() instanceof Reading.Pair) == bothLegs
        && reading.get().amounts().stream().allMatch(amount -> amount.dimension() == wanted);
  }

  /** The reading of an entry, if it has one. */
  public static Optional<Reading> reading(Entered entered) {
    if (entered instanceof Entered.Counted counted) {
      return Optional.of(counted.reading());
    }
    return entered instanceof Entered.Measured measured
        ? Optional.of(measured.reading())
        : Optional.empty();
  }
}
