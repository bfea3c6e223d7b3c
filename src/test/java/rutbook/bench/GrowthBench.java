package rutbook.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import rutbook.compare.BikeCheck;
import rutbook.compare.Comparison;
import rutbook.compare.FullComparison;
import rutbook.compare.SettingHistory;
import rutbook.compare.Subject;
import rutbook.edit.History;
import rutbook.edit.MotoEdit;
import rutbook.figures.ForkFigures;
import rutbook.figures.Riding;
import rutbook.figures.SteeringSweep;
import rutbook.json.RulesJson;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Section;
import rutbook.notebook.ServiceId;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.RuleBook;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.BaselineMotos;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.rebuild.ServiceBoard;
import rutbook.rebuild.ShopSheet;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Length;

/**
 * How long what is computed from a notebook takes at 100, 1,000 and 10,000 sessions, and the power
 * of the number of sessions that it grows with; ends with 1 when what takes longer than a frame
 * grows faster than {@value #MOST}.
 */
public final class GrowthBench {
  /** A little more than in proportion: sorting, and caches that a small notebook fits in. */
  private static final double MOST = 1.1;

  /** Within one frame nobody waits, and what is measured is the processor's cache. */
  private static final double ONE_FRAME = 16;

  private static final RuleBook RULES = RulesJson.ofTheTrade();
  private static final int[] SESSIONS = {100, 1_000, 10_000};
  private static final int FEWEST_ROUNDS = 4;
  private static final int WARM_UP = 1_000;

  /** Nanoseconds of the processor that are filled with rounds. */
  private static final long ENOUGH = 1_000_000_000L;

  private static final OperatingSystemMXBean SYSTEM =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private GrowthBench() {}

  public static void main(String[] arguments) {
    List<Notebook> notebooks = Arrays.stream(SESSIONS).mapToObj(GrowthBench::notebook).toList();
    boolean tooSteep = false;
    System.out.printf(
        Locale.ROOT, "%-34s %10d %10d %10d   power%n", "ms at sessions:", 100, 1_000, 10_000);
    for (Map.Entry<String, Function<Notebook, Object>> each : jobs().entrySet()) {
      double[] millis = new double[SESSIONS.length];
      long start = SYSTEM.getProcessCpuTime();
      for (int i = 0; i < WARM_UP && SYSTEM.getProcessCpuTime() - start < 2 * ENOUGH; i++) {
        each.getValue().apply(notebooks.get(0));
      }
      for (int i = 0; i < SESSIONS.length; i++) {
        millis[i] = millis(each.getValue(), notebooks.get(i));
      }
      double power = Math.log10(millis[2] / millis[0]) / 2;
      tooSteep |= power > MOST && millis[2] > ONE_FRAME;
      System.out.printf(
          Locale.ROOT,
          "%-34s %10.3f %10.3f %10.3f   %5.2f%n",
          each.getKey(),
          millis[0],
          millis[1],
          millis[2],
          power);
    }
    System.exit(tooSteep ? 1 : 0);
  }

  private static Map<String, Function<Notebook, Object>> jobs() {
    Map<String, Function<Notebook, Object>> jobs = new LinkedHashMap<>();
    jobs.put("timeline and what is on the bike", book -> timeline(book).now());
    jobs.put("hours since every service", GrowthBench::hours);
    jobs.put("check of the bike", book -> BikeCheck.of(timeline(book)));
    jobs.put("two tracks compared", GrowthBench::compared);
    jobs.put("two tracks over all sessions", GrowthBench::fullyCompared);
    jobs.put("history of every setting", book -> SettingHistory.of(timeline(book)));
    jobs.put("curves of what is on the bike", GrowthBench::curves);
    jobs.put("next change", book -> NextChange.of(book, Bench.BIKE, RULES));
    jobs.put("plan of a rebuild", book -> Planner.plan(from(book), Advisor.SILENT));
    jobs.put("sheet for the shop", book -> ShopSheet.of(book.shelf(), timeline(book), from(book)));
    jobs.put("motos on the baseline", GrowthBench::onBaseline);
    jobs.put("one edit", GrowthBench::edited);
    jobs.put("the whole notebook checked", GrowthBench::whole);
    return jobs;
  }

  private static Timeline timeline(Notebook notebook) {
    return Timeline.of(notebook, Bench.BIKE);
  }

  private static Object hours(Notebook notebook) {
    Timeline timeline = timeline(notebook);
    return ServiceBoard.of(timeline, timeline.lastDay().orElseThrow());
  }

  private static Object compared(Notebook notebook) {
    Timeline timeline = timeline(notebook);
    List<Track> tracks = notebook.shelf().tracks();
    return Comparison.of(
        Subject.best(timeline, tracks.get(0)).orElseThrow(),
        Subject.best(timeline, tracks.get(1)).orElseThrow());
  }

  private static Object fullyCompared(Notebook notebook) {
    Timeline timeline = timeline(notebook);
    List<Track> tracks = notebook.shelf().tracks();
    return FullComparison.of(
        notebook.shelf(),
        timeline,
        Subject.best(timeline, tracks.get(0)).orElseThrow(),
        Subject.best(timeline, tracks.get(1)).orElseThrow());
  }

  private static Object curves(Notebook notebook) {
    Timeline timeline = timeline(notebook);
    Riding riding = Riding.of(notebook.shelf(), timeline);
    Sheet sheet = timeline.bike().latestSheet();
    return List.of(
        ForkFigures.of(sheet, timeline.now(), riding),
        SteeringSweep.of(sheet, timeline.now(), Amount.of(0, Length.MILLIMETRE)));
  }

  private static PlanFrom from(Notebook notebook) {
    return PlanFrom.beginning(timeline(notebook), Scope.BOTH, Set.of(Renewed.OIL)).orElseThrow();
  }

  private static Object onBaseline(Notebook notebook) {
    Timeline timeline = timeline(notebook);
    List<Entry> entries = timeline.entries();
    EntryId last = entries.get(entries.size() - 1).id();
    return BaselineMotos.before(timeline, last, Bench.setup());
  }

  private static Object edited(Notebook notebook) {
    Entry.Session session = timeline(notebook).sessions().get(0);
    MotoId moto = session.motos().get(0).id();
    return History.of(notebook).after(new MotoEdit.Trust(session.id(), moto, OptionalInt.of(2)));
  }

  private static Object whole(Notebook notebook) {
    return Notebook.of(
        notebook.id(),
        notebook.shelf(),
        notebook.entries(),
        notebook.ruleChanges(),
        notebook.display());
  }

  /**
   * The mean of many rounds, as time of the processor over all threads: what else runs here does
   * not count. The system counts it in hundredths of a second, so a second is filled.
   */
  private static double millis(Function<Notebook, Object> job, Notebook notebook) {
    long start = SYSTEM.getProcessCpuTime();
    long spent = 0;
    int rounds = 0;
    while (rounds < FEWEST_ROUNDS || spent < ENOUGH) {
      if (job.apply(notebook) == null) {
        throw new AssertionError("nothing came out");
      }
      spent = SYSTEM.getProcessCpuTime() - start;
      rounds++;
    }
    return spent / 1e6 / rounds;
  }

  /** So many sessions of three motos, several on a day, with what is done in between. */
  private static Notebook notebook(int sessions) {
    List<Entry> entries = new ArrayList<>(List.of(Bench.baseline(Bench.setup())));
    for (int i = 0; i < sessions; i++) {
      LocalDate day = Bench.SPRING.plusDays(1 + i / 3);
      Head head =
          Head.of(new EntryId("s-" + i), Bench.BIKE, day, 2 * (i % 3))
              .withMeter(Optional.of(Bench.hours(String.valueOf(i))));
      Setup start = Bench.setup();
      entries.add(
          Bench.session("s-" + i, day, i % 2 == 0 ? Bench.HOLLOW : Bench.DUNE, start, motos(i))
              .with(head));
      Head between = Head.of(new EntryId("b-" + i), Bench.BIKE, day, 2 * (i % 3) + 1);
      entries.add(between(i, between));
    }
    return Notebook.of(new NotebookId("bench"), Bench.shelf(), entries, List.of(), Display.METRIC);
  }

  /** Clickers turned or sag measured; every forty hours new oil. */
  private static Entry between(int session, Head head) {
    if (session % 40 == 39) {
      List<ServiceId> oils = Bench.services().stream().map(ServiceItem::id).toList();
      return new Entry.Serviced(head, oils, "me");
    }
    return session % 2 == 0
        ? new Entry.Adjusted(head, List.of(change(session)))
        : sag(head, session);
  }

  private static Change change(int number) {
    return Change.of(Bench.FORK_REBOUND, Reading.bothLegs(Bench.clicks(number % 20)));
  }

  private static List<Moto> motos(int session) {
    List<Moto> motos = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      List<Feel> feel =
          List.of(Feel.of(End.REAR, Section.WHOOPS, Symptom.KICKS, (session + i) % 6));
      Moto moto =
          Bench.moto("m-" + session + "-" + i, i == 0 ? List.of() : List.of(change(i)), feel);
      motos.add(moto.withReport(moto.report().withTrust(OptionalInt.of(1 + (session + i) % 10))));
    }
    return motos;
  }

  private static Entry.SagMeasured sag(Head head, int number) {
    return new Entry.SagMeasured(
        head,
        End.REAR,
        Optional.of(Bench.mm(String.valueOf(95 + number % 20))),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
