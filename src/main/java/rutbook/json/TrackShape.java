package rutbook.json;

import java.util.Optional;
import rutbook.notebook.Ground;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;
import rutbook.units.Amount;

/** A place to ride. */
final class TrackShape extends RecordShape<Track> {
  private final Field<TrackId> id = required("id", Ids.TRACK, Track::id);
  private final Field<String> name = required("name", Texts.TEXT, Track::name);
  private final Field<Optional<Ground>> ground =
      optional("ground", Words.of(Ground.class), Track::ground);
  private final Field<Optional<Amount>> altitude =
      optional("altitude", AmountShape.AMOUNT, Track::altitude);
  private final Field<String> note = note("note", Track::note);

  @Override
  Track make(Got got) {
    return new Track(got.get(id), got.get(name), got.get(ground), got.get(altitude), got.get(note));
  }
}
