package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class PrintableTest {
  private static final String TEXT = "1¾ → 2 turns, ½ turn, 20 N·m, 3 µm, Zoë ✓ 日";

  @Test
  void whatAsciiCannotShowFallsBackToPlainLetters() {
    assertThat(new Printable(StandardCharsets.US_ASCII).of(TEXT))
        .isEqualTo("1 3/4 -> 2 turns, 1/2 turn, 20 N*m, 3 um, Zoe ok ?");
  }

  @Test
  void latinOneKeepsWhatItHas() {
    assertThat(new Printable(StandardCharsets.ISO_8859_1).of(TEXT))
        .isEqualTo("1¾ -> 2 turns, ½ turn, 20 N·m, 3 µm, Zoë ok ?");
  }

  @Test
  void unicodeStaysAsItIs() {
    assertThat(new Printable(StandardCharsets.UTF_8).of(TEXT)).isEqualTo(TEXT);
  }
}
