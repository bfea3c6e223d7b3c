package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import rutbook.drawing.TextWidth;

/** What charts keep apart without a toolkit is as wide as it counts on, in the real letters. */
class TextWidthTest {
  private static final PrintFont PLAIN = PrintFont.named("IBMPlexSansCondensed-Regular");
  private static final PrintFont BOLD = PrintFont.named("IBMPlexSansCondensed-SemiBold");

  @Property(tries = 300, seed = "41")
  void noTextIsWiderThanItIsTakenFor(
      @ForAll @CharRange(from = ' ', to = '~') @StringLength(max = 40) String text) {
    assertThat(PLAIN.width(text, 12)).isLessThanOrEqualTo(TextWidth.of(text, 12) + 1e-9);
    assertThat(BOLD.width(text, 12)).isLessThanOrEqualTo(TextWidth.of(text, 12) + 1e-9);
  }

  @Test
  void itIsNotMuchTooWideEither() {
    String said = "present, 345 mL";
    assertThat(TextWidth.of(said, 12)).isLessThan(1.35 * PLAIN.width(said, 12));
    assertThat(TextWidth.of("", 12)).isZero();
  }
}
