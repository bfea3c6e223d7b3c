package rutbook.imports;

import java.math.BigDecimal;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a lap time as timing systems and people write it. */
public final class LapTime {
  /** h:mm:ss.fff, m:ss.fff, m:ss:fff, m'ss"fff. */
  private static final Pattern CLOCK =
      Pattern.compile("(?:(\\d{1,2})[:h])?(\\d{1,3})[:'′](\\d{1,2})(?:[.,\"″:](\\d{1,9}))?[\"″]?");

  private static final Pattern THREE = Pattern.compile("(\\d{1,3}):(\\d{1,2}):(\\d{3})");
  private static final Pattern NUMBER =
      Pattern.compile("(\\d{1,8})(?:[.,](\\d{1,9}))?(?: ?s(?:ec)?)?");

  private LapTime() {}

  /**
   * The time in milliseconds; what is beyond a thousandth is cut off. Empty for what is no time,
   * such as sixty seconds after a colon.
   *
   * @param unit of a bare number
   */
  public static OptionalLong millis(String text, LapUnit unit) {
    String time = text.strip();
    Matcher three = THREE.matcher(time);
    if (three.matches()) {
      return clock("0", three.group(1), three.group(2), three.group(3));
    }
    Matcher clock = CLOCK.matcher(time);
    if (clock.matches()) {
      boolean colonBeforeFraction =
          clock.group(4) != null && time.charAt(clock.start(4) - 1) == ':';
      return colonBeforeFraction
          ? OptionalLong.empty()
          : clock(clock.group(1), clock.group(2), clock.group(3), clock.group(4));
    }
    Matcher number = NUMBER.matcher(time);
    if (!number.matches()) {
      return OptionalLong.empty();
    }
    String fraction = number.group(2) == null ? "0" : number.group(2);
    return OptionalLong.of(
        new BigDecimal(number.group(1) + "." + fraction)
            .multiply(BigDecimal.valueOf(unit.millis()))
            .longValue());
  }

  private static OptionalLong clock(String hours, String minutes, String seconds, String fraction) {
    long h = hours == null ? 0 : Long.parseLong(hours);
    long m = Long.parseLong(minutes);
    long s = Long.parseLong(seconds);
    if (s >= 60 || h > 0 && m >= 60) {
      return OptionalLong.empty();
    }
    String thousandths = ((fraction == null ? "" : fraction) + "000").substring(0, 3);
    return OptionalLong.of(((h * 60 + m) * 60 + s) * 1000 + Long.parseLong(thousandths));
  }
}
