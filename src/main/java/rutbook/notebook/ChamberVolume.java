package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** The empty volume of a chamber, and whether somebody measured it or it is an estimate. */
public record ChamberVolume(Amount volume, boolean measured) {
  public ChamberVolume {
    Checks.positive("chamber volume", Optional.of(volume), Dimension.VOLUME);
  }
}
