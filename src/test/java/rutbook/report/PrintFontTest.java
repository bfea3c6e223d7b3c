package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintFontTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "IBMPlexSans-Regular",
        "IBMPlexSans-SemiBold",
        "IBMPlexSansCondensed-Regular",
        "IBMPlexSansCondensed-SemiBold"
      })
  void digitsAreAllAsWideAndEveryLetterOfTheCardsIsThere(String name) {
    PrintFont font = PrintFont.named(name);
    for (char digit = '0'; digit <= '9'; digit++) {
      assertThat(font.width(String.valueOf(digit), 10)).isEqualTo(font.width("0", 10));
    }
    "0123456789→−–·¼½¾⅛°“”’…µ\uFFFD".codePoints().forEach(p -> assertThat(font.has(p)).isTrue());
    assertThat(font.has('東')).isFalse();
  }

  @Test
  void outlinesStandOnTheirBaseLineAndAreAsWideAsTheText() {
    PrintFont font = PrintFont.named("IBMPlexSansCondensed-Regular");
    var bounds = font.outlines("22", 100, 50, 20).getBounds2D();
    assertThat(bounds.getMaxY()).isCloseTo(50, within(0.5));
    assertThat(bounds.getMinX()).isGreaterThanOrEqualTo(100);
    assertThat(bounds.getMaxX()).isLessThanOrEqualTo(100 + font.width("22", 20));
  }

  /** The sum that a TrueType file keeps of each table (OpenType specification, table directory). */
  @Test
  void everyUnpackedTableHasItsChecksum() {
    ByteBuffer font = ByteBuffer.wrap(Resources.font("IBMPlexSans-Regular"));
    int tables = font.getShort(4);
    assertThat(tables).isGreaterThan(8);
    for (int i = 0; i < tables; i++) {
      int entry = 12 + 16 * i;
      boolean head = font.getInt(entry) == 0x68656164;
      int sum = 0;
      int offset = font.getInt(entry + 8);
      for (int at = 0; at < font.getInt(entry + 12); at += 4) {
        // The sum of the whole file, inside "head", counts as nothing in its own table's sum.
        sum += head && at == 8 ? 0 : word(font, offset + at);
      }
      assertThat(sum).isEqualTo(font.getInt(entry + 4));
    }
  }

  private static int word(ByteBuffer font, int at) {
    int word = 0;
    for (int i = 0; i < 4; i++) {
      word = word << 8 | (at + i < font.limit() ? font.get(at + i) & 0xFF : 0);
    }
    return word;
  }

  @Test
  void whatIsNoFontIsRefused() {
    assertThatThrownBy(() -> Woff.unpacked(new byte[100]))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
