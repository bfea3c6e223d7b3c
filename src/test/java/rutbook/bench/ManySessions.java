package rutbook.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Reading;
import rutbook.notebook.Report;
import rutbook.notebook.Section;
import rutbook.notebook.Setup;
import rutbook.notebook.Symptom;
import rutbook.notebook.TravelUsed;
import rutbook.units.Display;

/**
 * A notebook with as many sessions as nobody rides in a life, the same for the same seed; each
 * starts where the one before it ended.
 */
public final class ManySessions {
  private static final LocalDate FIRST = LocalDate.of(1996, 1, 1);

  private ManySessions() {}

  public static Notebook of(int sessions, long seed) {
    Random random = new Random(seed);
    List<Entry> entries = new ArrayList<>();
    entries.add(Bench.baseline(Bench.setup()));
    LocalDate from = Bench.bike().sheets().get(0).from();
    LocalDate first = FIRST.isBefore(from) ? from : FIRST;
    Setup setup = Bench.setup();
    for (int i = 0; i < sessions; i++) {
      List<Moto> motos = List.of(moto(i + "-1", random), moto(i + "-2", random));
      entries.add(
          Bench.session(
              "s-" + i,
              first.plusDays(i + 1L),
              random.nextBoolean() ? Bench.HOLLOW : Bench.DUNE,
              setup,
              motos));
      for (Moto moto : motos) {
        setup = setup.after(moto.changes());
      }
    }
    return Notebook.of(new NotebookId("many"), Bench.shelf(), entries, List.of(), Display.METRIC);
  }

  private static Moto moto(String name, Random random) {
    List<Lap> laps = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      laps.add(Lap.of(110_000 + random.nextInt(6_000)));
    }
    List<Feel> feel =
        List.of(
            Feel.of(End.REAR, Section.BRAKING_BUMPS, Symptom.KICKS, random.nextInt(6)),
            Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, random.nextInt(6)),
            Feel.of(End.FRONT, Section.CORNER_ENTRY, Symptom.DIVES, random.nextInt(6)));
    List<Change> changes =
        List.of(Change.of(Bench.SHOCK_REBOUND, Reading.of(Bench.clicks(8 + random.nextInt(8)))));
    Report report =
        new Report(laps, OptionalInt.of(1 + random.nextInt(10)), feel, TravelUsed.NOT_NOTED, false);
    return new Moto(
        new MotoId("m-" + name), MotoKind.MOTO, changes, report, Optional.empty(), "note " + name);
  }
}
