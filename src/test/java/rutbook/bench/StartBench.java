package rutbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;

/**
 * The first usable frame of the packaged program with its sample beside that of a bare themed
 * window with a table, each in a process of its own, in turns, on the same machine options: both
 * with the archive of classes that Java brings, and both with an archive of their own. Run it after
 * {@code mvn package}; where {@code DISPLAY} is set the windows are real. {@code StartBench [rounds
 * [image]]}: with the folder that {@code mvn package -P image} leaves, what is installed is
 * measured, in its own Java.
 */
public final class StartBench {
  private static final int ROUNDS = 7;

  private StartBench() {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : ROUNDS;
    Path scratch = Files.createTempDirectory("rutbook-start");
    try {
      Map<String, StartedProgram> programs = new LinkedHashMap<>();
      if (arguments.length > 1) {
        StartedProgram.Place image = StartedProgram.Place.image(Path.of(arguments[1]).toRealPath());
        StartedProgram installed = StartedProgram.packaged(image, scratch);
        add(programs, image, scratch, installed, installed.archived());
      } else {
        Path folder = Path.of("target", "rutbook").toRealPath();
        StartedProgram.Place place = StartedProgram.Place.folder(folder);
        StartedProgram packaged = StartedProgram.packaged(place, scratch);
        Path archive = folder.resolve("lib").resolve("rutbook.jsa");
        add(programs, place, scratch, packaged, packaged.archived(archive));
      }
      measure(programs, rounds);
    } finally {
      delete(scratch);
    }
  }

  private static void add(
      Map<String, StartedProgram> programs,
      StartedProgram.Place place,
      Path scratch,
      StartedProgram plain,
      StartedProgram archived)
      throws IOException, InterruptedException {
    StartedProgram bare = StartedProgram.bare(place, scratch);
    programs.put("bare table", bare);
    programs.put("Rutbook", plain);
    programs.put("bare table, its archive", bare.archived());
    programs.put("Rutbook, its archive", archived);
  }

  /** Every second program is measured against the one before it. */
  private static void measure(Map<String, StartedProgram> programs, int rounds)
      throws IOException, InterruptedException {
    Map<String, List<StartedProgram.Start>> starts = new LinkedHashMap<>();
    for (String name : programs.keySet()) {
      programs.get(name).start();
      starts.put(name, new ArrayList<>());
    }
    for (int i = 0; i < rounds; i++) {
      for (String name : programs.keySet()) {
        starts.get(name).add(programs.get(name).start());
      }
    }
    List<String> names = List.copyOf(programs.keySet());
    for (int i = 0; i < names.size(); i++) {
      StartedProgram.Start median = median(starts.get(names.get(i)));
      say(
          "%-24s %5d ms, processor %5d ms, most memory %4d MiB%n",
          names.get(i), median.millis(), median.cpuMillis(), median.memory() >> 10);
      if (i % 2 == 1) {
        StartedProgram.Start before = median(starts.get(names.get(i - 1)));
        say(
            "  beside the %s: %.2f times as long, %.2f times the processor, %.2f times the memory%n",
            names.get(i - 1),
            (double) median.millis() / before.millis(),
            (double) median.cpuMillis() / before.cpuMillis(),
            (double) median.memory() / before.memory());
      }
    }
    say(
        "medians of %d starts each, in turns, %s%n",
        rounds, System.getenv("DISPLAY") == null ? "without a display" : "on a display");
  }

  private static void say(String pattern, Object... facts) {
    System.out.printf(Locale.ROOT, pattern, facts);
  }

  private static StartedProgram.Start median(List<StartedProgram.Start> starts) {
    return new StartedProgram.Start(
        middle(starts, StartedProgram.Start::millis),
        middle(starts, StartedProgram.Start::cpuMillis),
        middle(starts, StartedProgram.Start::memory));
  }

  private static long middle(
      List<StartedProgram.Start> starts, ToLongFunction<StartedProgram.Start> of) {
    return starts.stream().mapToLong(of).sorted().toArray()[starts.size() / 2];
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
