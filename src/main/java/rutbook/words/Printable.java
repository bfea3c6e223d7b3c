package rutbook.words;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.text.Normalizer;
import java.util.Map;

/** Makes text fit a character set: what it cannot show falls back to plain letters. */
public final class Printable {
  private static final Map<Integer, String> PLAIN =
      Map.ofEntries(
          Map.entry((int) '→', "->"),
          Map.entry((int) '–', "-"),
          Map.entry((int) '—', "-"),
          Map.entry((int) '−', "-"),
          Map.entry((int) '…', "..."),
          Map.entry((int) '·', "*"),
          Map.entry((int) '×', "x"),
          Map.entry((int) '±', "+/-"),
          Map.entry((int) '“', "\""),
          Map.entry((int) '”', "\""),
          Map.entry((int) '‘', "'"),
          Map.entry((int) '’', "'"),
          Map.entry((int) 'µ', "u"),
          Map.entry((int) 'Ω', "Ohm"),
          Map.entry((int) '°', "deg "),
          Map.entry((int) '²', "2"),
          Map.entry((int) '³', "3"),
          Map.entry((int) '¼', " 1/4"),
          Map.entry((int) '½', " 1/2"),
          Map.entry((int) '¾', " 3/4"),
          Map.entry((int) '⅛', " 1/8"),
          Map.entry((int) '⅜', " 3/8"),
          Map.entry((int) '⅝', " 5/8"),
          Map.entry((int) '⅞', " 7/8"),
          Map.entry((int) '⅓', " 1/3"),
          Map.entry((int) '⅔', " 2/3"),
          Map.entry((int) '✓', "ok"),
          Map.entry((int) '≤', "<="),
          Map.entry((int) '≥', ">="),
          Map.entry(0x00A0, " "),
          Map.entry(0x2009, " "),
          Map.entry(0x202F, " "));

  private final CharsetEncoder encoder;

  public Printable(Charset charset) {
    this.encoder = charset.newEncoder();
  }

  /** The text with everything that cannot be shown replaced. */
  public String of(String text) {
    if (encoder.canEncode(text)) {
      return text;
    }
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints().forEach(each -> shown.append(shown(each, shown)));
    return shown.toString();
  }

  private String shown(int codePoint, StringBuilder before) {
    String itself = Character.toString(codePoint);
    if (encoder.canEncode(itself)) {
      return itself;
    }
    String plain = PLAIN.get(codePoint);
    if (plain != null) {
      boolean afterDigit =
          before.length() > 0 && Character.isDigit(before.charAt(before.length() - 1));
      return plain.startsWith(" ") && plain.length() > 1 && !afterDigit ? plain.strip() : plain;
    }
    String base = Normalizer.normalize(itself, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
    return !base.isEmpty() && encoder.canEncode(base) ? base : "?";
  }
}
