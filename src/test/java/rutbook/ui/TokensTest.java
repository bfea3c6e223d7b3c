package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The contrast of every pair of tokens that text is set in, by the relative luminance of WCAG 2.2
 * (success criterion 1.4.3).
 */
class TokensTest {
  private static final Pattern TOKEN = Pattern.compile("-rb-([a-z-]+):\\s*#([0-9A-Fa-f]{6})");
  private static final List<String> GROUNDS = List.of("desk", "page", "wash", "caution");
  private static final List<String> TEXTS = List.of("ink", "soft");
  private static final List<String> COLOURS = List.of("blue", "ochre", "brick");

  static Map<String, Integer> tokens(String sheet) throws IOException {
    try (InputStream stream = Window.class.getResourceAsStream(sheet)) {
      Matcher matcher = TOKEN.matcher(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
      Map<String, Integer> tokens = new HashMap<>();
      while (matcher.find()) {
        tokens.put(matcher.group(1), Integer.parseInt(matcher.group(2), 16));
      }
      return tokens;
    }
  }

  static double contrast(int a, int b) {
    double light = Math.max(luminance(a), luminance(b));
    double dark = Math.min(luminance(a), luminance(b));
    return (light + 0.05) / (dark + 0.05);
  }

  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16 & 255)
        + 0.7152 * linear(rgb >> 8 & 255)
        + 0.0722 * linear(rgb & 255);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  @ParameterizedTest
  @CsvSource({"light.css,4.5", "dark.css,4.5", "sun.css,7"})
  void everyTextStandsOutFromEveryGround(String sheet, double least) throws IOException {
    Map<String, Integer> tokens = tokens(sheet);
    for (String ground : GROUNDS) {
      for (String text : TEXTS) {
        assertThat(contrast(tokens.get(text), tokens.get(ground)))
            .as(sheet + ": " + text + " on " + ground)
            .isGreaterThanOrEqualTo(least);
      }
      for (String text : COLOURS) {
        assertThat(contrast(tokens.get(text), tokens.get(ground)))
            .as(sheet + ": " + text + " on " + ground)
            .isGreaterThanOrEqualTo(least);
      }
    }
    assertThat(contrast(tokens.get("on-ink"), tokens.get("ink"))).isGreaterThanOrEqualTo(least);
  }

  /** What is drawn, and where a focus is: WCAG 2.2, success criterion 1.4.11. */
  @ParameterizedTest
  @CsvSource({"light.css", "dark.css", "sun.css"})
  void everyMarkAndFocusStandsOutFromEveryGround(String sheet) throws IOException {
    Map<String, Integer> tokens = tokens(sheet);
    for (String ground : GROUNDS) {
      for (String mark : List.of("ink", "soft", "blue", "ochre", "brick")) {
        assertThat(contrast(tokens.get(mark), tokens.get(ground)))
            .as(sheet + ": " + mark + " on " + ground)
            .isGreaterThanOrEqualTo(3);
      }
    }
  }

  /** So the pairs above are all there are: text in a token on a ground of a token. */
  @Test
  void noStyleHasAColourThatIsNoToken() throws IOException {
    String common = text("rutbook.css").replaceAll("(?s)/\\*.*?\\*/", "");
    assertThat(Pattern.compile("#[0-9A-Fa-f]{3,8}\\b").matcher(common).results()).isEmpty();
    Set<String> grounds = new TreeSet<>();
    Set<String> texts = new TreeSet<>();
    collect(common, "-fx-background-color:\\s*-rb-([a-z-]+)", grounds);
    collect(common, "-fx-(?:text-fill|fill|icon-color):\\s*-rb-([a-z-]+)", texts);
    Set<String> known = new TreeSet<>(GROUNDS);
    known.addAll(List.of("ink", "hair"));
    assertThat(known).as("hair is a rule, ink the ground of what is chosen").containsAll(grounds);
    Set<String> checked = new TreeSet<>(TEXTS);
    checked.addAll(COLOURS);
    checked.addAll(List.of("on-ink", "page", "zone"));
    assertThat(checked).as("page and zone are inside of marks").containsAll(texts);
  }

  @Test
  void everyTokenThatIsUsedIsThere() throws IOException {
    Set<String> used = new TreeSet<>();
    collect(text("rutbook.css"), "-rb-([a-z-]+)", used);
    collect(text("sun.css"), "-rb-([a-z-]+)", used);
    assertThat(tokens("light.css").keySet()).containsAll(used);
  }

  private static void collect(String css, String pattern, Set<String> into) {
    Pattern.compile(pattern).matcher(css).results().forEach(each -> into.add(each.group(1)));
  }

  private static String text(String sheet) throws IOException {
    try (InputStream stream = Window.class.getResourceAsStream(sheet)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void everyThemeSetsTheSameTokens() throws IOException {
    assertThat(tokens("dark.css").keySet()).isEqualTo(tokens("light.css").keySet());
    assertThat(tokens("sun.css").keySet()).isEqualTo(tokens("light.css").keySet());
  }

  @Test
  void contrastIsThatOfTheStandard() {
    // WCAG 2.2: black on white 21:1; #767676 on white is the lightest grey at 4.54:1.
    assertThat(contrast(0x000000, 0xFFFFFF)).isEqualTo(21);
    assertThat(contrast(0x767676, 0xFFFFFF))
        .isCloseTo(4.54, org.assertj.core.api.Assertions.within(0.005));
  }
}
