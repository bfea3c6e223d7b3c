package rutbook.imports;

import java.util.Optional;
import java.util.regex.Pattern;
import rutbook.notebook.Setting;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.units.Dimension;
import rutbook.units.Unit;

/** Reads the cell of a setting. */
final class Cells {
  private static final Pattern OUT = Pattern.compile("(?i)(?:clicks?|turns?)?\\s*out\\s*$");
  private static final Pattern NOTHING = Pattern.compile("[-–—?]?");

  private Cells() {}

  /** Whether nobody wrote anything there. */
  static boolean isEmpty(String cell) {
    return NOTHING.matcher(cell).matches();
  }

  /**
   * The amount; a bare number counts in the unit that the heading has in brackets, else in the
   * setting's own.
   *
   * @throws AmountException when it is none
   */
  static Amount amount(String cell, String heading, Setting setting, DecimalMark decimals) {
    boolean counted =
        setting.dimension() == Dimension.CLICKS || setting.dimension() == Dimension.TURNS;
    String plain = counted ? OUT.matcher(cell).replaceFirst("").strip() : cell;
    return AmountText.parse(plain, unit(heading, setting), decimals.locale());
  }

  private static Unit unit(String heading, Setting setting) {
    Unit own = setting.scale().step().unit();
    String bracketed = Headings.bracketed(heading);
    if (bracketed.isEmpty()) {
      return own;
    }
    return Unit.ofSymbol(bracketed)
        .or(() -> typed(bracketed, own))
        .filter(unit -> unit.dimension() == own.dimension())
        .orElse(own);
  }

  private static Optional<Unit> typed(String text, Unit own) {
    try {
      return Optional.of(AmountText.parse("1 " + text, own).unit());
    } catch (AmountException noUnit) {
      return Optional.empty();
    }
  }
}
