package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** A place to ride. */
public record Track(
    TrackId id, String name, Optional<Ground> ground, Optional<Amount> altitude, String note) {
  public Track {
    name = Checks.name("track", name);
    Checks.dimension("altitude", altitude, Dimension.LENGTH);
    note = Checks.note("note", note);
  }
}
