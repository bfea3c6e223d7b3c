package rutbook.figures;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import rutbook.notebook.Carrier;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * Gathers SI numbers for one figure and notes what is missing or was assumed. A missing number
 * comes out as NaN, which never leaves: a figure is only made when nothing is missing.
 */
final class Inputs {
  private final Set<Need> needs = new LinkedHashSet<>();
  private final Set<Assumed> assumed = EnumSet.noneOf(Assumed.class);

  /** A range of numbers that bikes have, in SI. */
  record Believable(Dimension dimension, double least, double most) {}

  void need(Quantity quantity, Optional<Side> leg, Need.Why why) {
    needs.add(new Need(quantity, leg, why));
  }

  void assume(Assumed what) {
    assumed.add(what);
  }

  List<Need> needs() {
    return List.copyOf(needs);
  }

  boolean complete() {
    return needs.isEmpty();
  }

  /** The number, or a need when it is absent, in another measure, or beyond any bike. */
  double required(
      Quantity quantity,
      Optional<Side> leg,
      Optional<Amount> amount,
      Need.Why absent,
      Believable range) {
    if (amount.isEmpty()) {
      need(quantity, leg, absent);
      return Double.NaN;
    }
    if (amount.get().dimension() != range.dimension()) {
      need(quantity, leg, Need.Why.OTHER_MEASURE);
      return Double.NaN;
    }
    double si = amount.get().si();
    if (!(si >= range.least() && si <= range.most())) {
      need(quantity, leg, Need.Why.BEYOND_ANY_BIKE);
      return Double.NaN;
    }
    return si;
  }

  /** A number of the sheet. */
  double ofSheet(Quantity quantity, Optional<Amount> amount, Believable range) {
    return required(quantity, Optional.empty(), amount, Need.Why.NOT_ON_THE_SHEET, range);
  }

  /** A number of the sheet, or another with what that assumes. */
  double orAssume(
      Quantity quantity, Optional<Amount> amount, Believable range, Assumed what, double instead) {
    if (amount.isEmpty()) {
      assume(what);
      return instead;
    }
    return ofSheet(quantity, amount, range);
  }

  /** What a setting reads on a leg. */
  double ofSetup(
      Quantity quantity, Side leg, Optional<Setting> setting, Setup setup, Believable range) {
    if (setting.isEmpty()) {
      need(quantity, Optional.of(leg), Need.Why.NOT_ON_THE_SHEET);
      return Double.NaN;
    }
    return required(
        quantity,
        setting.get().carrier() == Carrier.SINGLE ? Optional.empty() : Optional.of(leg),
        reading(setup, setting.get(), leg),
        Need.Why.NOT_NOTED,
        range);
  }

  /** The setting of a role that serves a leg: in that leg, in both, or there once for all. */
  static Optional<Setting> serving(Sheet sheet, Role role, Side leg) {
    Carrier own = leg == Side.LEFT ? Carrier.LEFT : Carrier.RIGHT;
    List<Setting> settings = sheet.settings(role);
    return settings.stream()
        .filter(each -> each.carrier() == own)
        .findFirst()
        .or(() -> settings.stream().filter(each -> each.carrier() == Carrier.PAIR).findFirst())
        .or(() -> settings.stream().filter(each -> each.carrier() == Carrier.SINGLE).findFirst());
  }

  static Optional<Amount> reading(Setup setup, Setting setting, Side leg) {
    return setup.reading(setting.id()).flatMap(reading -> reading.leg(leg).known());
  }

  /** The figure, when nothing is missing; it is only reckoned then. */
  <T> Figure<T> figure(Supplier<T> reckoning) {
    return complete()
        ? new Figure.Of<>(reckoning.get(), assumed)
        : new Figure.Lacks<>(List.copyOf(needs));
  }
}
