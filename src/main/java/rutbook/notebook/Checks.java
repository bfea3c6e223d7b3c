package rutbook.notebook;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** The checks that several records share, here and in what is made of notebooks. */
public final class Checks {
  static final int LONGEST_NAME = 120;
  static final int LONGEST_NOTE = 20_000;

  /** Of one kind of thing in one list: more than a rider ever has, less than any file refuses. */
  static final int MOST_IN_A_LIST = 10_000;

  /** Digits of a plain number, before and after the point, as of an amount. */
  static final int MOST_DIGITS = 12;

  static final LocalDate FIRST_DAY = LocalDate.of(1970, 1, 1);
  static final LocalDate LAST_DAY = LocalDate.of(2199, 12, 31);

  private Checks() {}

  public static String name(String field, String text) {
    String trimmed = text.strip();
    if (trimmed.isEmpty()) {
      throw new NotebookException(Fault.EMPTY, field);
    }
    if (trimmed.length() > LONGEST_NAME) {
      throw new NotebookException(Fault.TEXT_TOO_LONG, field, trimmed.length(), LONGEST_NAME);
    }
    if (trimmed.chars().anyMatch(Character::isISOControl)) {
      throw new NotebookException(Fault.BAD_NAME, field, trimmed);
    }
    return trimmed;
  }

  public static String note(String field, String text) {
    if (text.length() > LONGEST_NOTE) {
      throw new NotebookException(Fault.TEXT_TOO_LONG, field, text.length(), LONGEST_NOTE);
    }
    return text;
  }

  public static void day(LocalDate day) {
    if (day.isBefore(FIRST_DAY) || day.isAfter(LAST_DAY)) {
      throw new NotebookException(Fault.BAD_DAY, day, FIRST_DAY, LAST_DAY);
    }
  }

  static void range(String kind, double number, double least, double most) {
    if (!(number >= least && number <= most)) {
      throw new NotebookException(Fault.OUT_OF_RANGE, kind, number, least, most);
    }
  }

  static void dimension(String field, Amount amount, Dimension dimension) {
    if (amount.dimension() != dimension) {
      throw new NotebookException(
          Fault.WRONG_UNIT, field, amount.unit().symbol(), dimension.name());
    }
    Sizes.check(field, amount);
  }

  static void dimension(String field, Optional<Amount> amount, Dimension dimension) {
    amount.ifPresent(present -> dimension(field, present, dimension));
  }

  /** A length, mass, rate or the like that must be more than nothing. */
  static void positive(String field, Optional<Amount> amount, Dimension dimension) {
    dimension(field, amount, dimension);
    amount.ifPresent(
        present -> {
          if (present.value().signum() <= 0) {
            throw new NotebookException(Fault.OUT_OF_RANGE, field, present, "> 0", "");
          }
        });
  }

  /** A number that is kept digit by digit. */
  static void decimal(String kind, BigDecimal number, double least, double most) {
    if (number.precision() > MOST_DIGITS || Math.abs((long) number.scale()) > MOST_DIGITS) {
      throw new NotebookException(Fault.TOO_MANY_DIGITS, kind, MOST_DIGITS);
    }
    range(kind, number.doubleValue(), least, most);
  }

  static <T> List<T> list(String kind, List<T> things) {
    return list(kind, things, MOST_IN_A_LIST);
  }

  public static <T> List<T> list(String kind, List<T> things, int most) {
    if (things.size() > most) {
      throw new NotebookException(Fault.TOO_MANY, kind, things.size(), most);
    }
    return List.copyOf(things);
  }

  public static <T> List<T> unique(String kind, List<T> things, Function<T, ?> key) {
    List<T> kept = list(kind, things);
    if (kept.size() < 2) {
      return kept;
    }
    Set<Object> seen = new HashSet<>(2 * kept.size());
    for (T thing : kept) {
      Object id = key.apply(thing);
      if (!seen.add(id)) {
        throw new NotebookException(Fault.TWICE, kind, id);
      }
    }
    return kept;
  }
}
