package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rutbook.json.RulesJson;
import rutbook.reasoning.Rule;

/** Every other language says all that English says, with the same facts in its sentences. */
class TranslationTest {
  private static final Path BUNDLES = Path.of("src/main/resources/rutbook/words");
  private static final Pattern FACT = Pattern.compile("\\{(\\d)");

  /** Bundles that have no English of their own: what they say stands in rules.json and in code. */
  private static final Set<String> ELSEWHERE = Set.of("Rules", "Usage");

  @Test
  void everyKeyIsThereInEveryLanguageAndNoneIsLeftOver() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (String bundle : english()) {
      for (Language language : others()) {
        Set<String> expected = read(bundle, "").stringPropertyNames();
        Set<String> found = read(bundle, "_" + language.tag()).stringPropertyNames();
        expected.stream()
            .filter(key -> !found.contains(key))
            .forEach(key -> wrong.add(language + " lacks " + bundle + " " + key));
        found.stream()
            .filter(key -> !expected.contains(key))
            .forEach(key -> wrong.add(language + " has too much: " + bundle + " " + key));
      }
    }
    assertThat(wrong.stream().sorted()).isEmpty();
  }

  @Test
  void everySentenceHasTheFactsOfTheEnglishOneAndCanBeRead() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (String bundle : english()) {
      Properties original = read(bundle, "");
      for (Language language : others()) {
        Properties other = read(bundle, "_" + language.tag());
        for (String key : other.stringPropertyNames()) {
          String pattern = other.getProperty(key);
          new MessageFormat(pattern, language.locale());
          if (original.containsKey(key)
              && !facts(pattern).equals(facts(original.getProperty(key)))) {
            wrong.add(language + " " + bundle + " " + key + ": " + pattern);
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void everyRuleOfTheTradeHasItsReasonInEveryLanguage() throws IOException {
    Set<String> rules =
        RulesJson.ofTheTrade().rules().stream()
            .map(Rule::id)
            .collect(Collectors.toCollection(TreeSet::new));
    for (Language language : others()) {
      assertThat(new TreeSet<>(read("Rules", "_" + language.tag()).stringPropertyNames()))
          .isEqualTo(rules);
    }
  }

  private static Set<String> facts(String pattern) {
    Set<String> facts = new TreeSet<>();
    Matcher matcher = FACT.matcher(pattern);
    while (matcher.find()) {
      facts.add(matcher.group(1));
    }
    return facts;
  }

  private static List<Language> others() {
    return Stream.of(Language.values()).filter(each -> each != Language.ENGLISH).toList();
  }

  private static List<String> english() throws IOException {
    try (Stream<Path> files = Files.list(BUNDLES)) {
      return files
          .map(path -> path.getFileName().toString())
          .filter(name -> name.endsWith(".properties") && !name.contains("_"))
          .map(name -> name.replace(".properties", ""))
          .filter(name -> !ELSEWHERE.contains(name))
          .sorted()
          .toList();
    }
  }

  private static Properties read(String bundle, String suffix) throws IOException {
    Properties all = new Properties();
    Path file = BUNDLES.resolve(bundle + suffix + ".properties");
    if (Files.exists(file)) {
      try (Reader text = Files.newBufferedReader(file)) {
        all.load(text);
      }
    }
    return all;
  }
}
