package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Torque;

class BikeWordsTest {
  private static final Path PAGE = Path.of("src/main/java/rutbook/ui/bike");
  private static final Path BUNDLES = Path.of("src/main/resources/rutbook/words");
  private static final Pattern SAID = Pattern.compile("\\btext\\(\\s*\"([^\"]+)\"\\s*[,)]");

  private final BikeWords words = new BikeWords(Phrases.english(Display.METRIC));

  private static Properties bundle(String name) throws IOException {
    Properties all = new Properties();
    try (Reader reader = Files.newBufferedReader(BUNDLES.resolve(name + ".properties"))) {
      all.load(reader);
    }
    return all;
  }

  @Test
  void everyKeyThatThePageSaysExists() throws IOException {
    Set<String> known = new TreeSet<>(bundle("Bike").stringPropertyNames());
    known.addAll(bundle("Window").stringPropertyNames());
    Set<String> missing = new TreeSet<>();
    int seen = 0;
    try (Stream<Path> sources = Files.list(PAGE)) {
      for (Path source : sources.toList()) {
        Matcher said = SAID.matcher(Files.readString(source));
        while (said.find()) {
          seen++;
          if (!known.contains(said.group(1))) {
            missing.add(source.getFileName() + " " + said.group(1));
          }
        }
      }
    }
    assertThat(seen).isGreaterThan(60);
    assertThat(missing).isEmpty();
  }

  @Test
  void aSettingStandsOnOneLineWithItsLimitsItsCountAndItsLegs() {
    Sheet sheet = Bench.sheet();
    Setting compression = sheet.setting(Bench.FORK_COMPRESSION).orElseThrow();
    Setting tube = sheet.setting(Bench.TUBE).orElseThrow();
    assertThat(words.bounds(sheet, compression)).isEqualTo("0 to 22 clicks out · each leg");
    assertThat(words.bounds(sheet, tube)).isEqualTo("0 to 10 mm (0 to 0.39 in)");
  }

  @Test
  void aFieldShowsAnAmountAsItWasWritten() {
    assertThat(words.written(Amount.of("18", Torque.POUND_FORCE_FOOT))).isEqualTo("18 lbf·ft");
    assertThat(words.written(Bench.turns("1.75"))).isEqualTo("1¾ turns");
  }

  @Test
  void thingsInARowAreJoinedAsPeopleSayThem() {
    assertThat(words.list(List.of())).isEmpty();
    assertThat(words.list(List.of("oil"))).isEqualTo("oil");
    assertThat(words.list(List.of("oil", "seals", "linkage"))).isEqualTo("oil, seals and linkage");
  }
}
