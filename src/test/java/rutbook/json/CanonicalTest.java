package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rutbook.notebook.Dice;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Shared;
import rutbook.share.SetupFiles;

/** Against the examples of RFC 8785, and against another program that follows it. */
class CanonicalTest {
  private static String canonical(String text) throws IOException {
    JsonNode tree = Trees.MAPPER.readTree(text);
    return Canonical.text(tree);
  }

  /** RFC 8785, section 3.2.2 (the input) and 3.2.3 (the output). */
  @Test
  void theExampleOfTheRfcComesOutAsItSays() throws IOException {
    String input =
        """
        {
          "numbers": [333333333.33333329, 1E30, 4.50,
                      2e-3, 0.000000000000000000000000001],
          "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
          "literals": [null, true, false]
        }
        """;
    assertThat(canonical(input))
        .isEqualTo(
            "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                + "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
  }

  /** RFC 8785, section 3.2.3: names in the order of their UTF-16 units. */
  @Test
  void fieldsAreInTheOrderOfTheRfc() throws IOException {
    String input =
        """
        {"\\u20ac": "Euro Sign", "\\r": "Carriage Return",
         "\\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
         "\\ud83d\\ude00": "Emoji: Grinning Face", "\\u0080": "Control",
         "\\u00f6": "Latin Small Letter O With Diaeresis"}
        """;
    assertThat(canonical(input).replaceAll("[^:,]*:(\"Emoji: )?\"?([^\",]*)\"?[,}]", "$2;"))
        .isEqualTo(
            "Carriage Return;One;Control;Latin Small Letter O With Diaeresis;Euro Sign;"
                + "Grinning Face;Hebrew Letter Dalet With Dagesh;");
  }

  /** RFC 8785, appendix B, those that are no edge of what a double can hold. */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0, 0",
    "1e23, 1e+23",
    "9.999999999999997e+22, 9.999999999999997e+22",
    "999999999999999700000, 999999999999999700000",
    "999999999999999900000, 999999999999999900000",
    "1e+21, 1e+21",
    "9.999999999999997e-7, 9.999999999999997e-7",
    "0.000001, 0.000001",
    "333333333.3333332, 333333333.3333332",
    "-0.0000033333333333333333, -0.0000033333333333333333",
    "1424953923781206.2, 1424953923781206.2"
  })
  void numbersAreWrittenAsTheRfcSays(String written, String canonical) throws IOException {
    assertThat(canonical("[" + written + "]")).isEqualTo("[" + canonical + "]");
  }

  @Property(tries = 60, seed = "8785")
  void anySetupFileHasTheTextThatAnotherProgramGivesIt(@ForAll long seed) throws IOException {
    Dice dice = new Dice(new Random(seed));
    var file = SetupFiles.whole(Notebooks.of(seed, 12), EnumSet.allOf(Shared.class));
    byte[] bytes = SetupJson.write(SetupFiles.advised(file, dice));
    String text = new String(bytes, StandardCharsets.UTF_8);
    assertThat(canonical(text)).isEqualTo(new JsonCanonicalizer(text).getEncodedString());
  }
}
