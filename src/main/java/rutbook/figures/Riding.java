package rutbook.figures;

import java.util.Optional;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Timeline;
import rutbook.units.Amount;

/**
 * What a fork is ridden with besides its setup.
 *
 * @param frontSag of the fork with the rider aboard, along the fork
 * @param altitude where its air was last bled
 */
public record Riding(Optional<Amount> frontSag, Optional<Amount> altitude) {
  public static final Riding NOT_NOTED = new Riding(Optional.empty(), Optional.empty());

  /** The front sag as last measured; no altitude. */
  public static Riding of(Timeline timeline) {
    Optional<Amount> sag = timeline.sag(End.FRONT).flatMap(Entry.SagMeasured::race);
    return new Riding(sag, Optional.empty());
  }

  public Riding at(Optional<Amount> newAltitude) {
    return new Riding(frontSag, newAltitude);
  }
}
