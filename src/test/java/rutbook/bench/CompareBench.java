package rutbook.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.compare.FullComparison;
import rutbook.compare.SettingHistory;
import rutbook.compare.Subject;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;

/** How long choosing and comparing takes on a notebook of many sessions, warm. */
public final class CompareBench {
  private static final int ROUNDS = 15;

  private CompareBench() {}

  /** Prints medians in ms: {@code CompareBench [sessions]}; 10,000. */
  public static void main(String[] arguments) {
    int sessions = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
    Notebook notebook = notebook(sessions);
    Timeline timeline = Timeline.of(notebook, Bench.BIKE);
    Track hollow = notebook.shelf().track(Bench.HOLLOW).orElseThrow();
    Track dune = notebook.shelf().track(Bench.DUNE).orElseThrow();
    Entry.Session last = timeline.sessions().get(sessions - 1);
    Track there = notebook.shelf().track(last.track()).orElseThrow();
    print("timeline of the notebook", () -> Timeline.of(notebook, Bench.BIKE));
    print("best of a track", () -> Subject.best(timeline, hollow).orElseThrow());
    print(
        "two motos compared",
        () ->
            FullComparison.of(
                notebook.shelf(),
                timeline,
                Subject.of(timeline, last, there, 0),
                Subject.of(timeline, last, there, 1)));
    print(
        "two tracks compared, all sessions",
        () ->
            FullComparison.of(
                notebook.shelf(),
                timeline,
                Subject.best(timeline, hollow).orElseThrow(),
                Subject.best(timeline, dune).orElseThrow()));
    print("history of every setting", () -> SettingHistory.of(timeline));
  }

  /** A work and its result, which must not be left out by the compiler. */
  private interface Work {
    Object done();
  }

  private static void print(String name, Work work) {
    long[] nanos = new long[ROUNDS];
    int seen = 0;
    for (int i = 0; i < ROUNDS; i++) {
      long start = System.nanoTime();
      seen += work.done() == null ? 1 : 0;
      nanos[i] = System.nanoTime() - start;
    }
    long[] warm = Arrays.copyOfRange(nanos, ROUNDS / 3, ROUNDS);
    Arrays.sort(warm);
    System.out.printf(
        Locale.ROOT,
        "%-34s %7.1f ms (first %.1f ms)%n",
        name,
        warm[warm.length / 2] / 1e6,
        (nanos[0] + seen) / 1e6);
  }

  private static Notebook notebook(int sessions) {
    Notebook notebook = Bench.notebook();
    for (int i = 0; i < sessions; i++) {
      List<Moto> motos = new ArrayList<>();
      for (int moto = 0; moto < 3; moto++) {
        motos.add(moto(i, moto));
      }
      LocalDate day = Bench.SPRING.plusDays(1 + i);
      notebook =
          notebook.with(
              Bench.session(
                  "s" + i, day, i % 2 == 0 ? Bench.HOLLOW : Bench.DUNE, Bench.setup(), motos));
    }
    return notebook;
  }

  private static Moto moto(int session, int number) {
    List<Change> changes =
        number == 0 && session % 3 > 0
            ? List.of()
            : List.of(
                new Change(
                    Bench.FORK_COMPRESSION,
                    Reading.bothLegs(Bench.clicks(10 + (session + number) % 6)),
                    Optional.empty(),
                    ""));
    List<Feel> feel =
        List.of(Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, (session + number) % 5));
    List<Lap> laps = new ArrayList<>();
    for (int lap = 0; lap < 6; lap++) {
      laps.add(Lap.of(110_000 + (session * 37L + number * 411 + lap * 173) % 3000));
    }
    Moto moto = Bench.moto("m" + session + "-" + number, changes, feel);
    return moto.withReport(
        moto.report().withLaps(laps).withTrust(OptionalInt.of(1 + (session + number) % 9)));
  }
}
