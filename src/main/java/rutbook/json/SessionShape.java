package rutbook.json;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Conditions;
import rutbook.notebook.EndOfDayCheck;
import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
import rutbook.notebook.Reading;
import rutbook.notebook.RiderId;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.TrackId;

/** A day at a track. */
final class SessionShape extends EntryShape<Entry.Session> {
  private final Field<TrackId> track = required("track", Ids.TRACK, Entry.Session::track);
  private final Field<RiderId> rider = required("rider", Ids.RIDER, Entry.Session::rider);
  private final Field<Conditions> conditions =
      usually(Conditions.NOT_NOTED, "conditions", new ConditionsShape(), Entry.Session::conditions);
  private final Field<Setup> start = required("start", new SetupShape(), Entry.Session::start);
  private final Field<List<Moto>> motos = list("motos", new MotoShape(), Entry.Session::motos);
  private final Field<Optional<EndOfDayCheck>> check =
      optional("check", new CheckShape(), Entry.Session::check);

  SessionShape() {
    super("session");
  }

  @Override
  Entry.Session make(Got got) {
    return new Entry.Session(
        head(got),
        got.get(track),
        got.get(rider),
        got.get(conditions),
        got.get(start),
        got.get(motos),
        got.get(check));
  }

  /** What was counted after riding. */
  private static final class CheckShape extends RecordShape<EndOfDayCheck> {
    private final Field<List<EndOfDayCheck.Found>> found =
        required("found", new ListShape<>(new FoundShape()), EndOfDayCheck::found);

    @Override
    EndOfDayCheck make(Got got) {
      return new EndOfDayCheck(got.get(found));
    }
  }

  /** One setting as it was seen. */
  private static final class FoundShape extends RecordShape<EndOfDayCheck.Found> {
    {
      onOneLine();
    }

    private final Field<SettingId> setting =
        required("setting", Ids.SETTING, EndOfDayCheck.Found::setting);
    private final Field<Reading> seen =
        required("seen", ReadingShape.READING, EndOfDayCheck.Found::seen);

    @Override
    EndOfDayCheck.Found make(Got got) {
      return new EndOfDayCheck.Found(got.get(setting), got.get(seen));
    }
  }
}
