package rutbook.ui.log;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rutbook.imports.LapTime;
import rutbook.imports.LapUnit;
import rutbook.notebook.Lap;

/**
 * Lap times out of any text: one per line or comma, as 1:52.3, 112.3 or 1:02:03.4, with or without
 * a number or word before them. What is no lap is told, not lost.
 */
public record PastedLaps(List<Lap> laps, List<String> bad) {
  /** "Lap 3", "3." or "#3" before the time. */
  private static final Pattern NUMBERED =
      Pattern.compile(
          "(?:(?i:lap|runde|l)\\s*\\d*\\s*[:.)\\t -]\\s*|#?\\d{1,3}[.)]?[\\s\\t]+)?(.*)");

  public PastedLaps {
    laps = List.copyOf(laps);
    bad = List.copyOf(bad);
  }

  public static PastedLaps of(String text) {
    List<Lap> laps = new ArrayList<>();
    List<String> bad = new ArrayList<>();
    for (String piece : pieces(text)) {
      String trimmed = piece.strip();
      if (trimmed.isEmpty()) {
        continue;
      }
      long millis = millis(trimmed);
      if (millis >= 1 && millis <= Lap.LONGEST_MILLIS && laps.size() < 1000) {
        laps.add(Lap.of(millis));
      } else {
        bad.add(trimmed.length() <= 30 ? trimmed : trimmed.substring(0, 30) + "…");
      }
    }
    return new PastedLaps(laps, bad);
  }

  /**
   * A comma parts two laps, unless it is a decimal comma: digits on both sides and no point
   * anywhere.
   */
  private static String[] pieces(String text) {
    boolean decimalComma =
        !text.contains(".")
            && Pattern.compile("\\d,\\d{1,3}(?!\\d)").matcher(text).find()
            && !Pattern.compile("\\d,\\d+:").matcher(text).find();
    return decimalComma
        ? text.replaceAll("(\\d),(\\d{1,3})(?!\\d)", "$1.$2").split("[\\n\\r;]+|,\\s+")
        : text.split("[\\n\\r;,]+");
  }

  /** Zero for what is no time. */
  private static long millis(String text) {
    Matcher numbered = NUMBERED.matcher(text);
    String time = numbered.matches() ? numbered.group(1) : text;
    return LapTime.millis(time, LapUnit.SECONDS).orElse(0);
  }
}
