package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Fault;
import rutbook.units.AmountException;
import rutbook.units.Display;
import rutbook.units.Edge;
import rutbook.units.Unit;

/** The bundles as a whole: nothing that the program says is missing or malformed. */
class BundlesTest {
  private static final Path SOURCES = Path.of("src/main/java/rutbook");
  private static final Path BUNDLES = Path.of("src/main/resources/rutbook/words");
  private static final Pattern AREA = Pattern.compile("String AREA = \"(\\w+)\"");
  private static final Pattern SAID =
      Pattern.compile("\\bsay(?:IfKnown)?\\(\\s*(AREA|\"\\w+\"),\\s*\"([^\"]+)\"\\s*[,)]");
  private static final Pattern FIELD =
      Pattern.compile(
          "(?:Checks\\.\\w+\\(|Fault\\.[A-Z_]+,|unknown\\()\\s*\"([a-z][a-z ]*)\"\\s*,");

  private final Phrases phrases = Phrases.english(Display.METRIC);

  @Test
  void everyKeyThatTheProgramSaysExists() throws IOException {
    List<String> missing = new ArrayList<>();
    int seen = 0;
    for (Path source : javaFiles(SOURCES)) {
      String text = Files.readString(source);
      Matcher area = AREA.matcher(text);
      String own = area.find() ? area.group(1) : "";
      Matcher said = SAID.matcher(text);
      while (said.find()) {
        String bundle = said.group(1).equals("AREA") ? own : said.group(1).replace("\"", "");
        seen++;
        if (!keys(bundle).contains(said.group(2))) {
          missing.add(source.getFileName() + ": " + bundle + " " + said.group(2));
        }
      }
    }
    assertThat(seen).isGreaterThan(10);
    assertThat(missing).isEmpty();
  }

  @Test
  void everyEnumConstantOfTheNotebookHasAName() throws IOException {
    Set<String> names = keys("Names");
    List<String> missing = new ArrayList<>();
    for (JavaClass type :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("rutbook.notebook", "rutbook.units")) {
      if (!type.isEnum() || isSaidOtherwise(type)) {
        continue;
      }
      for (Object constant : type.reflect().getEnumConstants()) {
        if (!names.contains(Phrases.key((Enum<?>) constant))) {
          missing.add(Phrases.key((Enum<?>) constant));
        }
      }
    }
    assertThat(missing).isEmpty();
  }

  /**
   * Units say their own sign; which edge is rounded inwards is never said; faults are whole
   * sentences.
   */
  private static boolean isSaidOtherwise(JavaClass type) {
    return type.isAssignableTo(Unit.class)
        || type.isEquivalentTo(Edge.class)
        || type.isEquivalentTo(Fault.class)
        || type.isEquivalentTo(AmountException.Fault.class);
  }

  @Test
  void everyFaultHasASentence() throws IOException {
    Set<String> expected = new TreeSet<>();
    for (Fault fault : Fault.values()) {
      expected.add("Fault." + fault.name() + (fault == Fault.WRONG_LEGS ? ".pair" : ""));
    }
    for (AmountException.Fault fault : AmountException.Fault.values()) {
      expected.add("Amount." + fault.name());
    }
    assertThat(keys("Faults")).containsAll(expected);
  }

  @Test
  void everyFieldThatTheNotebookChecksHasAWord() throws IOException {
    Set<String> used = new TreeSet<>();
    List<Path> checking = new ArrayList<>(javaFiles(SOURCES.resolve("notebook")));
    checking.addAll(javaFiles(SOURCES.resolve("share")));
    for (Path source : checking) {
      Matcher field = FIELD.matcher(Files.readString(source));
      while (field.find()) {
        used.add(FaultWords.key(field.group(1)));
      }
    }
    assertThat(used).hasSizeGreaterThan(40);
    assertThat(keys("Faults")).containsAll(used);
  }

  @Test
  void everyPatternCanBeReadAndKeepsItsApostrophes() throws IOException {
    for (Path bundle : propertyFiles()) {
      Properties all = read(bundle);
      for (String key : all.stringPropertyNames()) {
        String pattern = all.getProperty(key);
        String place = bundle.getFileName() + " " + key;
        assertThat(new MessageFormat(pattern, Locale.UK)).as(place).isNotNull();
        assertThat(pattern.replace("''", "")).as(place).doesNotContain("'");
        assertThat(pattern).as(place).isNotBlank();
      }
    }
  }

  @Test
  void aSecondLanguageIsFilesAndNoCode() {
    Phrases esperanto = new Phrases(Locale.forLanguageTag("eo"), Display.METRIC);

    assertThat(
            new ChangeWords(esperanto)
                .change(Words.COMPRESSION, Words.clicks(12), Words.clicks(14)))
        .isEqualTo("12 → 14 for (2 pli mola)");
    assertThat(new ReadingWords(phrases).amount(Words.COMPRESSION, Words.clicks(14)))
        .as("the other language leaves English alone")
        .isEqualTo("14 out");
  }

  private static Set<String> keys(String bundle) throws IOException {
    return read(BUNDLES.resolve(bundle + ".properties")).stringPropertyNames();
  }

  private static Properties read(Path bundle) throws IOException {
    Properties all = new Properties();
    try (Reader reader = Files.newBufferedReader(bundle)) {
      all.load(reader);
    }
    return all;
  }

  private static List<Path> javaFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
  }

  private static List<Path> propertyFiles() throws IOException {
    try (Stream<Path> files = Files.list(BUNDLES)) {
      return files.sorted().toList();
    }
  }
}
