package rutbook.figures;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Chamber;
import rutbook.notebook.ChamberVolume;
import rutbook.notebook.Role;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.physics.Atmosphere;
import rutbook.units.Amount;
import rutbook.units.Volume;

/**
 * What is in one leg, as far as it is known.
 *
 * @param chamber volume of the chamber that its fill goes into; none for an open bath by level and
 *     for an air leg
 * @param chamberFrom who says so
 */
public record LegFigures(
    Side side,
    Optional<Amount> fill,
    Optional<Amount> spring,
    Optional<Amount> preload,
    Optional<Amount> airPressure,
    Optional<Amount> chamber,
    ChamberFrom chamberFrom) {

  /** Where a chamber's volume comes from. */
  public enum ChamberFrom {
    MEASURED,
    /** The sheet's, not measured; measuring makes it exact. */
    SHEET_ESTIMATE,
    /** Reckoned from the manual's greatest fill; measuring makes it exact. */
    GREATEST_FILL,
    /** This fork's air is not reckoned from a chamber volume. */
    NOT_USED,
    /** Too little is known to reckon it. */
    NOT_KNOWN
  }

  static List<LegFigures> of(Sheet sheet, Setup setup) {
    return Arrays.stream(Side.values()).map(side -> of(sheet, setup, side)).toList();
  }

  private static LegFigures of(Sheet sheet, Setup setup, Side side) {
    Inputs inputs = new Inputs();
    Optional<LegFill> leg = LegFill.read(inputs, sheet, setup, side, Atmosphere.SEA_LEVEL);
    Optional<Double> reckoned = leg.flatMap(LegFill::chamberVolume);
    Optional<ChamberVolume> onSheet =
        Inputs.serving(sheet, Role.FORK_OIL, side).flatMap(sheet::chamber).flatMap(Chamber::volume);
    return new LegFigures(
        side,
        reading(sheet, setup, Role.FORK_OIL, side),
        reading(sheet, setup, Role.FORK_SPRING, side),
        reading(sheet, setup, Role.FORK_PRELOAD, side),
        reading(sheet, setup, Role.FORK_AIR, side),
        onSheet
            .map(ChamberVolume::volume)
            .or(() -> reckoned.map(volume -> Si.amount(volume, Volume.MILLILITRE, 0))),
        from(leg, onSheet));
  }

  private static ChamberFrom from(Optional<LegFill> leg, Optional<ChamberVolume> onSheet) {
    if (onSheet.isPresent()) {
      return onSheet.get().measured() ? ChamberFrom.MEASURED : ChamberFrom.SHEET_ESTIMATE;
    }
    if (leg.isEmpty()) {
      return ChamberFrom.NOT_KNOWN;
    }
    return leg.get().chamberVolume().isPresent() ? ChamberFrom.GREATEST_FILL : ChamberFrom.NOT_USED;
  }

  private static Optional<Amount> reading(Sheet sheet, Setup setup, Role role, Side side) {
    return Inputs.serving(sheet, role, side)
        .flatMap(setting -> Inputs.reading(setup, setting, side));
  }
}
