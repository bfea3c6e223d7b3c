package rutbook.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Carrier;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.physics.ForkCurve;
import rutbook.physics.Polytropic;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * Another setting of the fork that gives back the reserve which a held one is short of: on one of
 * its steps and inside its limits. The reserve counts from full extension on the line n = 1.3; by
 * the curve's model an estimate, whatever was measured.
 *
 * @param to the reading that comes nearest, the same on every leg that has the setting
 * @param part of the missing reserve that it gives back; one is all of it
 */
public record ReserveMatch(SettingId setting, Reading from, Reading to, double part) {
  /** Settings that the curve knows, those that leave the fork's height alone first. */
  private static final List<Role> ROLES =
      List.of(Role.FORK_OIL, Role.FORK_AIR, Role.FORK_PRELOAD, Role.FORK_SPRING);

  private static final int HALVINGS = 50;

  /** Whether a setting of this role has a place in the curve. */
  public static boolean knows(Role role) {
    return ROLES.contains(role);
  }

  /**
   * What could make up for a held setting, each by itself, in the order of {@link #ROLES}; empty
   * when there is no curve, or no step of another setting gives back at least a quarter.
   *
   * @param wanted the setup with the wanted reading
   * @param reached the setup with the held one
   * @param held the setting that is held
   */
  public static List<ReserveMatch> of(
      Sheet sheet, Setup wanted, Setup reached, SettingId held, Riding riding) {
    Search search = new Search(sheet, reached, riding);
    Optional<Double> target = search.reserve(wanted);
    Optional<Double> present = search.reserve(reached);
    List<ReserveMatch> matches = new ArrayList<>();
    if (target.isEmpty() || present.isEmpty()) {
      return matches;
    }
    for (Role role : ROLES) {
      for (Setting setting : sheet.settings(role)) {
        if (!setting.id().equals(held)) {
          search.match(setting, target.get(), present.get()).ifPresent(matches::add);
        }
      }
    }
    return List.copyOf(matches);
  }

  private record Search(Sheet sheet, Setup reached, Riding riding) {
    Optional<Double> reserve(Setup setup) {
      return ForkBuild.curve(sheet, setup, riding.altitude()).found().map(Search::reserve);
    }

    private static double reserve(ForkCurve curve) {
      return curve.reserve(0, Polytropic.LINE);
    }

    Optional<ReserveMatch> match(Setting setting, double target, double present) {
      Optional<Reading> from =
          reached.reading(setting.id()).filter(Reading::isKnown).filter(each -> !each.legsDiffer());
      double missing = target - present;
      if (from.isEmpty() || missing == 0 || setting.dimension() == Dimension.CLICKS) {
        return Optional.empty();
      }
      return nearest(setting, target)
          .map(amount -> reading(setting, amount))
          .filter(to -> !to.sameAs(from.get()))
          .flatMap(
              to ->
                  reserve(with(setting, to))
                      .map(
                          reserve ->
                              new ReserveMatch(
                                  setting.id(), from.get(), to, (reserve - present) / missing)))
          .filter(match -> match.part() >= 0.25 && match.part() <= 1.75);
    }

    private Setup with(Setting setting, Reading reading) {
      return reached.with(Placed.found(setting.id(), reading));
    }

    private static Reading reading(Setting setting, Amount amount) {
      return setting.carrier() == Carrier.PAIR ? Reading.bothLegs(amount) : Reading.of(amount);
    }

    /** By halving, since the reserve rises or falls all the way with each of these settings. */
    private Optional<Amount> nearest(Setting setting, double target) {
      Range limits = sheet.limits(setting);
      Optional<Double> atLeast = at(setting, limits.least());
      Optional<Double> atMost = at(setting, limits.most());
      if (atLeast.isEmpty() || atMost.isEmpty()) {
        return Optional.empty();
      }
      boolean rising = atMost.get() > atLeast.get();
      double low = limits.least().si();
      double high = limits.most().si();
      for (int i = 0; i < HALVINGS; i++) {
        double middle = (low + high) / 2;
        Optional<Double> there = at(setting, written(setting, middle));
        if (there.isEmpty()) {
          return Optional.empty();
        }
        if (there.get() < target == rising) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return onStep(setting, limits, (low + high) / 2);
    }

    private Optional<Double> at(Setting setting, Amount amount) {
      return reserve(with(setting, reading(setting, amount)));
    }

    private static Amount written(Setting setting, double si) {
      return Si.amount(si, setting.scale().step().unit(), 6);
    }

    /** The nearest multiple of the setting's step that its limits allow. */
    private static Optional<Amount> onStep(Setting setting, Range limits, double si) {
      Amount step = setting.scale().step();
      BigDecimal steps =
          written(setting, si).value().divide(step.value(), 0, RoundingMode.HALF_EVEN);
      Amount amount = step.withValue(steps.multiply(step.value()));
      return Optional.of(limits.hold(amount));
    }
  }
}
