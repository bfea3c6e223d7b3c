package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** The two gas chambers of an air leg, without which no curve of it is drawn. */
public record AirLeg(Amount pistonDiameter, Amount positiveVolume, Amount negativeVolume) {
  public AirLeg {
    Checks.positive("piston diameter", Optional.of(pistonDiameter), Dimension.LENGTH);
    Checks.positive("positive chamber", Optional.of(positiveVolume), Dimension.VOLUME);
    Checks.positive("negative chamber", Optional.of(negativeVolume), Dimension.VOLUME);
  }
}
