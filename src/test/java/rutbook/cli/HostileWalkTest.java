package rutbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rutbook.file.FileNames;
import rutbook.file.FileReading;
import rutbook.file.RealDisk;
import rutbook.json.JsonException;
import rutbook.json.NotebookJson;
import rutbook.notebook.Bike;
import rutbook.notebook.Dice;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Track;

/**
 * Every command on random notebooks with random references and options, on files that are whole and
 * on files that are not: always an answer or a sentence, and never a changed file.
 */
class HostileWalkTest {
  @TempDir Path folder;

  private final RealDisk disk = new RealDisk(System.getProperty("os.name"));
  private final List<Throwable> unexpected = new ArrayList<>();
  private final Set<Integer> exits = new HashSet<>();

  /** What a command line ended with and said. */
  private record Answered(int exit, String out, String errors) {}

  private Notebook read(String name) {
    byte[] bytes =
        FileNames.path(name)
            .then(path -> new FileReading(disk).read(path, FileReading.LIMIT))
            .fold(
                read -> read,
                fault -> {
                  throw Refusal.file(fault.toString());
                });
    try {
      return NotebookJson.read(bytes);
    } catch (JsonException noNotebook) {
      throw Refusal.file(name, noNotebook.fault());
    }
  }

  private Answered run(List<String> words, Charset charset) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream errors = new ByteArrayOutputStream();
    Terminal terminal = new Terminal(new PrintStream(out, true, charset), charset);
    int exit =
        new RutbookCommand(terminal, this::read, (name, bytes, replace) -> {}, new NoProgram())
            .execute(
                new Terminal(new PrintStream(errors, true, charset), charset),
                unexpected::add,
                words.toArray(String[]::new));
    return new Answered(exit, out.toString(charset), errors.toString(charset));
  }

  @Test
  void aShortWalkNeverEndsInATrace() throws IOException {
    walk(20260503, 10);
    assertThat(exits).contains(Exit.DONE, Exit.PROBLEM, Exit.WRONG_USE, Exit.NO_FILE);
  }

  @Test
  @Tag("long")
  void aLongWalkNeverEndsInATrace() throws IOException {
    walk(20261125, 600);
  }

  private void walk(long seed, int notebooks) throws IOException {
    Dice dice = new Dice(new Random(seed));
    for (int i = 0; i < notebooks; i++) {
      Notebook notebook = Notebooks.of(dice.random().nextLong(), dice.below(25));
      byte[] whole = NotebookJson.write(notebook);
      Path file = folder.resolve("walk.rutbook");
      for (int command = 0; command < 24; command++) {
        byte[] bytes = dice.once(8) ? broken(whole, dice) : whole;
        Files.write(file, bytes);
        List<String> words = words(dice, notebook, file);
        Answered answered = run(words, dice.once(3) ? StandardCharsets.US_ASCII : UTF_8);
        answersOrSays(words, answered);
        assertThat(Files.readAllBytes(file)).as("%s", words).isEqualTo(bytes);
      }
    }
    try (var left = Files.list(folder)) {
      assertThat(left.map(each -> each.getFileName().toString())).containsExactly("walk.rutbook");
    }
  }

  private static final Charset UTF_8 = StandardCharsets.UTF_8;

  private void answersOrSays(List<String> words, Answered answered) {
    exits.add(answered.exit());
    assertThat(unexpected).as("%s", words).isEmpty();
    assertThat(answered.exit()).as("%s", words).isBetween(0, Exit.UNEXPECTED - 1);
    String said = answered.out() + answered.errors();
    assertThat(said).as("%s", words).isNotBlank().doesNotContain("Exception", "\tat ");
    if (answered.exit() == Exit.WRONG_USE || answered.exit() == Exit.NO_FILE) {
      boolean json = words.contains("--json");
      assertThat(json ? answered.out() : answered.errors()).as("%s", words).isNotBlank();
    }
  }

  private static byte[] broken(byte[] whole, Dice dice) {
    byte[] bytes = whole.clone();
    if (dice.once(3)) {
      return java.util.Arrays.copyOf(bytes, dice.below(bytes.length));
    }
    for (int i = dice.between(1, 6); i > 0; i--) {
      bytes[dice.below(bytes.length)] = (byte) "09\"-}e\u0007".charAt(dice.below(7));
    }
    return bytes;
  }

  private static List<String> words(Dice dice, Notebook notebook, Path file) {
    List<String> words = new ArrayList<>();
    String command =
        dice.any(
            List.of(
                "log",
                "compare",
                "compare",
                "compare",
                "rebuild",
                "rebuild",
                "check",
                "card",
                "fork",
                "gas",
                "oil",
                "sag",
                "steering"));
    words.add(command);
    words.add(dice.once(30) ? file.getParent().toString() : file.toString());
    Bike bike = dice.any(notebook.bikes());
    if (dice.once(2) || notebook.bikes().size() > 1) {
      words.addAll(List.of("--bike", dice.once(2) ? bike.id().text() : bike.name()));
    }
    switch (command) {
      case "compare" -> {
        words.add(reference(dice, notebook));
        words.add(reference(dice, notebook));
      }
      case "card" -> {
        words.addAll(List.of("--to", dice.any(List.of("a.html", "b.pdf", "c.txt", "-", "x"))));
        dice.times(2, () -> reference(dice, notebook)).forEach(words::add);
      }
      case "rebuild" -> words.addAll(job(dice));
      case "fork" -> option(words, dice, "--fill", List.of("335 mL", "1 km", "12 fl oz", "-4 mL"));
      case "oil" -> option(words, dice, "--at", List.of("60 °C", "-300 C", "0 F", "9e9 C"));
      case "steering" -> option(words, dice, "--rear-sag", List.of("104", "4 in", "-1", "1e99"));
      default -> {}
    }
    if (dice.once(3)) {
      words.addAll(List.of("--units", dice.any(List.of("us", "metric", "stones"))));
    }
    if (dice.once(3)) {
      words.add("--json");
    }
    return words;
  }

  private static void option(List<String> words, Dice dice, String name, List<String> values) {
    if (dice.once(2)) {
      words.addAll(List.of(name, dice.any(values)));
    }
  }

  private static List<String> job(Dice dice) {
    List<String> words = new ArrayList<>();
    for (String what : List.of("--fork", "--shock")) {
      if (dice.once(2)) {
        words.add(what);
      }
    }
    if (dice.once(2)) {
      words.addAll(
          List.of(
              "--changed",
              dice.any(List.of("oil", "oil,seals", "SPRING,valving", "oil,oil", "paint", ","))));
    }
    return words;
  }

  private static String reference(Dice dice, Notebook notebook) {
    Track track = dice.any(notebook.shelf().tracks());
    String day =
        Notebooks.anEntry(notebook, dice, Entry.Session.class).orElseThrow().day().toString();
    return switch (dice.below(10)) {
      case 0 -> "now";
      case 1 -> "baseline";
      case 2 -> "track:\"" + track.name() + "\"";
      case 3 -> "track:" + dice.name();
      case 4, 5 -> day;
      case 6, 7 -> day + "#" + dice.below(6);
      case 8 ->
          dice.any(
              List.of("", "2026-02-30", "1900-01-01", "2026-05-03#999", "#1", "track:", "NOW"));
      default -> dice.name();
    };
  }
}
