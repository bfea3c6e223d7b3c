package rutbook.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import rutbook.json.NotebookJson;
import rutbook.json.SetupJson;
import rutbook.notebook.Bench;
import rutbook.notebook.Dice;
import rutbook.notebook.Notebook;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Shared;
import rutbook.samples.Samples;
import rutbook.share.SetupFile;
import rutbook.share.SetupFiles;
import rutbook.units.Unit;

/**
 * Runs one of the fuzz targets under Jazzer, which steers its bytes by the code they reach: {@code
 * FuzzRun notebook 1200} for twenty minutes. What it finds is kept under {@code target/fuzz} and
 * ends it with another number than 0. Needs the profile {@code fuzz} on the class path.
 */
public final class FuzzRun {
  private static final Path FOLDER = Path.of("target", "fuzz");

  /** Bytes of the longest input: short ones are tried more often. */
  private static final int LONGEST = 24 << 10;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private FuzzRun() {}

  /** A target, what it starts from, and the words it may put in. */
  private record Target(Class<?> type, Map<String, byte[]> seeds, Set<String> words) {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    Target target =
        switch (arguments[0]) {
          case "notebook" -> new Target(NotebookFuzz.class, notebooks(), schemaWords("notebook"));
          case "setup" -> new Target(SetupFuzz.class, setups(), schemaWords("notebook"));
          case "table" -> new Target(TableFuzz.class, tables(), signs());
          case "typed" -> new Target(TypedFuzz.class, typed(), signs());
          default -> throw new IllegalArgumentException(arguments[0]);
        };
    System.exit(run(arguments[0], target, arguments[1]));
  }

  private static int run(String name, Target target, String seconds)
      throws IOException, InterruptedException {
    Path corpus = Files.createDirectories(FOLDER.resolve(name).resolve("corpus"));
    for (Map.Entry<String, byte[]> seed : target.seeds().entrySet()) {
      Files.write(corpus.resolve(seed.getKey()), seed.getValue());
    }
    Path words = FOLDER.resolve(name).resolve("words");
    Files.write(words, target.words().stream().map(FuzzRun::quoted).toList());
    Path found = Files.createDirectories(FOLDER.resolve(name).resolve("found"));
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx1g",
            "-cp",
            System.getProperty("java.class.path"),
            "com.code_intelligence.jazzer.Jazzer",
            "--target_class=" + target.type().getName(),
            "--instrumentation_includes=rutbook.**",
            "--custom_hook_includes=rutbook.**",
            "--reproducer_path=" + found,
            "-artifact_prefix=" + found + "/",
            "-dict=" + words,
            "-max_total_time=" + seconds,
            "-max_len=" + LONGEST,
            "-timeout=300",
            "-rss_limit_mb=4096",
            "-print_final_stats=1",
            corpus.toString());
    return new ProcessBuilder(command).inheritIO().start().waitFor();
  }

  private static Map<String, byte[]> notebooks() throws IOException {
    List<Notebook> notebooks =
        new ArrayList<>(List.of(Bench.notebook(), Samples.firstDay(), Samples.splitFork()));
    for (int i = 0; i < 60; i++) {
      notebooks.add(Notebooks.of(i, 1 + i % 5));
    }
    Map<String, byte[]> seeds = new LinkedHashMap<>();
    for (Notebook notebook : notebooks) {
      byte[] compact = MAPPER.writeValueAsBytes(MAPPER.readTree(NotebookJson.write(notebook)));
      if (compact.length <= LONGEST) {
        seeds.put("notebook-" + seeds.size(), compact);
      }
    }
    return seeds;
  }

  /** Without their checksums, or nothing but the checksum would ever be looked at. */
  private static Map<String, byte[]> setups() throws IOException {
    Map<String, byte[]> seeds = new LinkedHashMap<>();
    for (int i = 0; i < 80; i++) {
      Dice dice = new Dice(new Random(i));
      Notebook notebook = Notebooks.of(i, 1 + i % 5);
      SetupFile file = SetupFiles.whole(notebook, Set.of(Shared.values()));
      SetupFile either = i % 2 == 0 ? file : SetupFiles.advised(file, dice);
      ObjectNode tree = (ObjectNode) MAPPER.readTree(SetupJson.write(either));
      tree.remove("checksum");
      byte[] compact = MAPPER.writeValueAsBytes(tree);
      if (compact.length <= LONGEST) {
        seeds.put("setup-" + seeds.size(), compact);
      }
    }
    return seeds;
  }

  private static Map<String, byte[]> tables() {
    Map<String, byte[]> seeds = new LinkedHashMap<>();
    List<String> examples =
        List.of(
            "Rider,Lap,Time\nA. Rider,1,1:52.345\nA. Rider,2,1:51.9\n",
            "sep=;\nTag;Runde;Zeit\n03.05.2026;1;112,345\n",
            "lap\ttime\n1\t112.3\n2\t\"1:51,9\"\n",
            "Date,Track,Fork rebound,Shock rebound,Note\n2026-05-03,Hollow,12 clicks,9,\"a, b\"\n",
            "Setting;03.05.2026;10.05.2026\nFork rebound;12;14\nFork oil;335 mL;340\n");
    examples.forEach(each -> seeds.put("table-" + seeds.size(), bytes(each)));
    return seeds;
  }

  private static Map<String, byte[]> typed() {
    Map<String, byte[]> seeds = new LinkedHashMap<>();
    List<String> examples =
        List.of(
            "\u0001Lap 1 1:52.3, 1:51.9\n3. 112.3\n1:02:03.4",
            "\u0021\"9.5 fl oz",
            "\u00219.5 fl oz",
            "@9 1/2 oz",
            "P9½ fl oz",
            "Q-1,5 turns",
            "R1,234.5 mm",
            "S3.2e5 kPa");
    examples.forEach(each -> seeds.put("typed-" + seeds.size(), bytes(each)));
    return seeds;
  }

  private static Set<String> signs() {
    Set<String> words = new TreeSet<>(List.of("½", "¼", "/", "Lap", "Runde", ":", "1,234", "E+9"));
    Unit.all().forEach(unit -> words.add(unit.symbol()));
    return words;
  }

  /** Every name of a field and every word that a schema knows. */
  private static Set<String> schemaWords(String schema) throws IOException {
    try (InputStream in =
        NotebookJson.class.getResourceAsStream("/rutbook/json/" + schema + ".schema.json")) {
      Set<String> words = new TreeSet<>(Set.of("{", "}", "[", "]", ":", ",", "null", "true"));
      collect(MAPPER.readTree(in), words);
      return words;
    }
  }

  private static void collect(JsonNode node, Set<String> words) {
    node.path("properties").fieldNames().forEachRemaining(name -> words.add('"' + name + '"'));
    node.path("enum").forEach(word -> words.add(word.toString()));
    node.forEach(each -> collect(each, words));
  }

  /** As the fuzzer's dictionary wants it: printable bytes, all others by number. */
  private static String quoted(String word) {
    StringBuilder quoted = new StringBuilder("\"");
    for (byte each : bytes(word)) {
      boolean plain = each > ' ' && each < 127 && each != '"' && each != '\\';
      quoted.append(plain ? String.valueOf((char) each) : String.format("\\x%02X", each & 0xFF));
    }
    return quoted.append('"').toString();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
