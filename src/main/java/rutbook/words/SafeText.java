package rutbook.words;

/**
 * Text that somebody typed, made safe to show: a character that would turn the direction of the
 * line, move the cursor or hide is shown as its number.
 */
public final class SafeText {
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private SafeText() {}

  /** On one line: line breaks become spaces. */
  public static String line(String text) {
    return shown(text, false);
  }

  /** Over several lines: line breaks stay, as plain line feeds. */
  public static String lines(String text) {
    return shown(text.replace("\r\n", "\n").replace('\r', '\n'), true);
  }

  private static String shown(String text, boolean breaksStay) {
    StringBuilder safe = new StringBuilder(text.length());
    text.codePoints().forEach(point -> append(safe, point, breaksStay));
    return safe.toString();
  }

  private static void append(StringBuilder safe, int point, boolean breaksStay) {
    if (point == '\n' || point == '\r' || point == '\t') {
      safe.append(breaksStay && point == '\n' ? '\n' : ' ');
    } else if (isTreacherous(point)) {
      safe.append(String.format("<U+%04X>", point));
    } else {
      safe.appendCodePoint(point);
    }
  }

  /**
   * Joiners are letters of some scripts and of emoji; every other format character may deceive, and
   * what is no character at all is refused by readers of markup.
   */
  private static boolean isTreacherous(int point) {
    if (point == ZERO_WIDTH_JOINER || point == ZERO_WIDTH_NON_JOINER) {
      return false;
    }
    if ((point & 0xFFFE) == 0xFFFE || point >= 0xFDD0 && point <= 0xFDEF) {
      return true;
    }
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }
}
