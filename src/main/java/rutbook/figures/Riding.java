package rutbook.figures;

import java.util.Optional;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Ready;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.units.Amount;

/**
 * What a fork is ridden with besides its setup.
 *
 * @param frontSag of the fork with the rider aboard, along the fork
 * @param altitude where its air was last bled
 */
public record Riding(Optional<Amount> frontSag, Optional<Amount> altitude) {
  public static final Riding NOT_NOTED = new Riding(Optional.empty(), Optional.empty());

  /**
   * The front sag as last measured, and the altitude of the last track at which the fork was noted
   * as bled.
   */
  public static Riding of(Shelf shelf, Timeline timeline) {
    Optional<Amount> sag = timeline.sag(End.FRONT).flatMap(Entry.SagMeasured::race);
    Optional<Amount> altitude =
        timeline.sessions().stream()
            .filter(session -> session.conditions().ready().contains(Ready.FORK_AIR_BLED))
            .reduce((earlier, later) -> later)
            .flatMap(session -> shelf.track(session.track()))
            .flatMap(Track::altitude);
    return new Riding(sag, altitude);
  }

  public Riding at(Optional<Amount> newAltitude) {
    return new Riding(frontSag, newAltitude);
  }
}
