package rutbook.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rutbook.app.StartedWindow;

/**
 * The first usable frame of the program beside that of a bare window with a table, each in a
 * process of its own, in turns.
 */
public final class StartBench {
  private static final int ROUNDS = 7;

  private StartBench() {}

  /** From the start of the process to its third frame. */
  private record Start(long millis, long cpuMillis) {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : ROUNDS;
    String sample = Path.of("sample-notebooks", "season.rutbook").toString();
    List<Start> bare = new ArrayList<>();
    List<Start> ours = new ArrayList<>();
    Path folder = Files.createTempDirectory("rutbook-start");
    Start first = run(StartedWindow.class, sample, folder.toString());
    for (int i = 0; i < rounds; i++) {
      bare.add(run(BareTable.class));
      ours.add(run(StartedWindow.class, sample, folder.toString()));
    }
    delete(folder);
    System.out.printf("the first start of all %d ms (cpu %d)%n", first.millis(), first.cpuMillis());
    Start least = median(bare);
    Start mine = median(ours);
    System.out.printf(
        "bare table %d ms (cpu %d), the program %d ms (cpu %d): ratio %.2f (cpu %.2f), %d rounds%n",
        least.millis(),
        least.cpuMillis(),
        mine.millis(),
        mine.cpuMillis(),
        (double) mine.millis() / least.millis(),
        (double) mine.cpuMillis() / least.cpuMillis(),
        rounds);
  }

  private static Start run(Class<?> main, String... arguments)
      throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-Dglass.platform=Monocle",
                "-Dmonocle.platform=Headless",
                "-Dprism.order=sw",
                "-Dprism.text=t2k",
                "-Dheadless.geometry=1280x800-32",
                "-Djavafx.cachedir=target/javafx-cache",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
    command.addAll(List.of(arguments));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    String told =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    process.waitFor();
    String[] both = told.split(" ");
    return new Start(Long.parseLong(both[0]), Long.parseLong(both[1]));
  }

  private static Start median(List<Start> starts) {
    return new Start(
        starts.stream().map(Start::millis).sorted().toList().get(starts.size() / 2),
        starts.stream().map(Start::cpuMillis).sorted().toList().get(starts.size() / 2));
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
