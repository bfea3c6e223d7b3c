package rutbook.compare;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.notebook.TrackId;

/** Sessions with laps and settings, for the tests of this package. */
final class Rides {
  static final LocalDate MAY = LocalDate.of(2026, 5, 3);

  private Rides() {}

  /** A moto whose first lap, from the start, is slow. */
  static Moto moto(String id, double... seconds) {
    List<Lap> laps =
        DoubleStream.concat(DoubleStream.of(150), DoubleStream.of(seconds))
            .mapToObj(lap -> Lap.of(Math.round(lap * 1000)))
            .toList();
    Moto moto = Bench.moto(id, List.of(), List.of());
    return moto.withReport(moto.report().withLaps(laps).withTrust(OptionalInt.of(5)));
  }

  static Moto changed(Moto moto, SettingId setting, Reading to) {
    return moto.withChanges(List.of(new Change(setting, to, Optional.empty(), "")));
  }

  static Setup compression(long clicks) {
    Reading reading = Reading.bothLegs(Bench.clicks(clicks));
    return Bench.setup().with(Placed.set(Bench.FORK_COMPRESSION, reading));
  }

  static Entry.Session session(int day, TrackId track, Setup start, Moto... motos) {
    return Bench.session("s" + day, MAY.plusDays(day), track, start, List.of(motos));
  }

  static Timeline timeline(Entry... entries) {
    Notebook notebook = Bench.notebook();
    for (Entry entry : entries) {
      notebook = notebook.with(entry);
    }
    return Timeline.of(notebook, Bench.BIKE);
  }

  static Track track(TrackId id) {
    return Bench.notebook().shelf().track(id).orElseThrow();
  }
}
