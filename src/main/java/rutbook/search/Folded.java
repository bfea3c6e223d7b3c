package rutbook.search;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** A text as it is compared: small letters, no accents, one space between words. */
final class Folded {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern SPACES = Pattern.compile("[\\s\\h]+");

  private Folded() {}

  /** {@code "Größe MÄRZ"} becomes {@code "grosse marz"}. */
  static String of(String text) {
    String plain = isAscii(text) ? text : withoutMarks(text);
    return SPACES.matcher(plain.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
  }

  private static boolean isAscii(String text) {
    return text.chars().allMatch(letter -> letter < 128);
  }

  private static String withoutMarks(String text) {
    String parted = Normalizer.normalize(text, Normalizer.Form.NFKD);
    return MARKS.matcher(parted).replaceAll("").replace("ß", "ss");
  }
}
