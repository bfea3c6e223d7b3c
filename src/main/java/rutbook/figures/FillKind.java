package rutbook.figures;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Measure;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.units.Amount;

/**
 * Which fill a curve is for. Least and most are of oil: of a level, the least oil is the most mm.
 */
public enum FillKind {
  LEAST,
  NOMINAL,
  MOST,
  PRESENT;

  /** What is varied: the oil, or the pressure of an air fork. */
  public static Role varied(Sheet sheet) {
    return sheet.parts().fork().kind() == ForkKind.AIR ? Role.FORK_AIR : Role.FORK_OIL;
  }

  /** The setup with this fill in every leg; empty when the sheet names no such fill. */
  Optional<Setup> applied(Sheet sheet, Setup setup) {
    if (this == PRESENT) {
      return Optional.of(setup);
    }
    List<Setting> settings = sheet.settings(varied(sheet));
    Setup next = setup;
    for (Setting setting : settings) {
      Optional<Amount> amount = of(sheet, setting);
      if (amount.isEmpty()) {
        return Optional.empty();
      }
      Reading reading =
          setting.carrier() == Carrier.PAIR
              ? Reading.bothLegs(amount.get())
              : Reading.of(amount.get());
      next = next.with(Placed.found(setting.id(), reading));
    }
    return settings.isEmpty() ? Optional.empty() : Optional.of(next);
  }

  private Optional<Amount> of(Sheet sheet, Setting setting) {
    Range limits = sheet.limits(setting);
    Optional<Chamber> chamber = sheet.chamber(setting);
    boolean level = chamber.map(each -> each.measure() == Measure.LEVEL).orElse(false);
    return switch (this) {
      case LEAST -> Optional.of(level ? limits.most() : limits.least());
      case MOST -> Optional.of(level ? limits.least() : limits.most());
      case NOMINAL -> chamber.flatMap(Chamber::nominal);
      case PRESENT -> Optional.empty();
    };
  }

  /** The known fills of a setup, left first; one when both legs are the same. */
  static List<Amount> fills(Sheet sheet, Setup setup) {
    return sheet.settings(varied(sheet)).stream()
        .flatMap(setting -> setup.reading(setting.id()).stream())
        .flatMap(
            reading ->
                reading.legsDiffer()
                    ? reading.amounts().stream()
                    : reading.amounts().stream().limit(1))
        .toList();
  }
}
