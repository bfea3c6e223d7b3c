package rutbook.figures;

import rutbook.figures.Inputs.Believable;
import rutbook.notebook.Measure;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.physics.OilLevel;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Length;
import rutbook.units.Volume;

/**
 * A change of oil level as a volume, and the other way round, {@code dV = A dh} in the bare tube.
 * Levels and volumes stay as they were measured; this is only for pouring and drawing off.
 *
 * @param step a change of level: more oil is a smaller number
 * @param volume that it takes in one leg
 */
public record LevelFigures(Amount step, Amount volume) {
  private static final Believable BORE = new Believable(Dimension.LENGTH, 0.015, 0.08);
  private static final Believable STEP = new Believable(Dimension.LENGTH, -0.5, 0.5);
  private static final Believable OIL = new Believable(Dimension.VOLUME, -3e-3, 3e-3);

  /** Whether the fork's fill is set by its level. */
  public static boolean byLevel(Sheet sheet) {
    return sheet.settings(Role.FORK_OIL).stream()
        .map((Setting setting) -> sheet.chamber(setting))
        .anyMatch(chamber -> chamber.map(each -> each.measure() == Measure.LEVEL).orElse(false));
  }

  /** The volume of a change of level, within ±500 mm. */
  public static Figure<LevelFigures> ofLevel(Sheet sheet, Amount step) {
    Inputs inputs = new Inputs();
    double bore = inputs.ofSheet(Quantity.TUBE_BORE, sheet.parts().fork().tubeBore(), BORE);
    double change = inputs.ofSheet(Quantity.FORK_FILL, java.util.Optional.of(step), STEP);
    return inputs.figure(
        () ->
            new LevelFigures(
                step, Si.amount(OilLevel.volume(change, bore, 0), Volume.MILLILITRE, 1)));
  }

  /** The change of level of a volume, within ±3 L. */
  public static Figure<LevelFigures> ofVolume(Sheet sheet, Amount oil) {
    Inputs inputs = new Inputs();
    double bore = inputs.ofSheet(Quantity.TUBE_BORE, sheet.parts().fork().tubeBore(), BORE);
    double volume = inputs.ofSheet(Quantity.FORK_FILL, java.util.Optional.of(oil), OIL);
    return inputs.figure(
        () ->
            new LevelFigures(
                Si.amount(OilLevel.level(volume, bore, 0), Length.MILLIMETRE, 1), oil));
  }
}
