package rutbook.words;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;

/** Days and times by the custom of the language; the short form is the one that can be typed. */
public final class DayWords {
  private static final DateTimeFormatter MINUTES =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final DateTimeFormatter medium;
  private final DateTimeFormatter monthOnly;
  private final DateTimeFormatter yearAndMonth;

  DayWords(Locale locale) {
    this.medium = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale);
    this.monthOnly = DateTimeFormatter.ofPattern("LLL", locale);
    this.yearAndMonth = DateTimeFormatter.ofPattern("LLL yyyy", locale);
  }

  /** Such as "3 May 2026". */
  public String day(LocalDate day) {
    return medium.format(day);
  }

  /** Such as "May", or "Jan 2027" where a year begins. */
  public String month(YearMonth month) {
    return (month.getMonthValue() == 1 ? yearAndMonth : monthOnly).format(month);
  }

  /** Such as "2026-05-03", which the command line understands. */
  public String typed(LocalDate day) {
    return day.toString();
  }

  /** Hours and minutes, such as "14:05". */
  public String time(LocalTime time) {
    return MINUTES.format(time);
  }

  /** A lap such as 1:54.6: whole milliseconds are kept, zeros at the end are not. */
  public String lap(long millis) {
    long minutes = millis / 60_000;
    long rest = millis % 60_000;
    String thousandths = String.format(Locale.ROOT, "%03d", rest % 1000);
    String fraction = thousandths.replaceAll("0{1,2}$", "");
    String seconds = String.format(Locale.ROOT, minutes > 0 ? "%02d" : "%d", rest / 1000);
    return (minutes > 0 ? minutes + ":" : "") + seconds + "." + fraction;
  }
}
