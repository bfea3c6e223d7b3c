package rutbook.imports;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads days as people and spreadsheets write them. What is first in 3/4/2026 is never guessed: it
 * follows from another day of the same column, or is asked.
 */
final class Days {
  private static final Pattern NUMBERS =
      Pattern.compile("(\\d{1,4})([-/. ])(\\d{1,2})\\2(\\d{1,4})(?:[T ,]+\\d{1,2}[:.h].*)?");

  private static final Pattern DAY_NAMED =
      Pattern.compile(
          "(?:\\p{L}+[., ]+)?(\\d{1,2})(?:st|nd|rd|th|\\.)?[- ]*(\\p{L}{3,})[-., ]*(\\d{4})");

  private static final Pattern MONTH_NAMED =
      Pattern.compile(
          "(?:\\p{L}+[., ]+)?(\\p{L}{3,})[-. ]*(\\d{1,2})(?:st|nd|rd|th)?[-, ]+(\\d{4})");

  private static final List<Locale> LANGUAGES =
      List.of(
          Locale.ENGLISH,
          Locale.GERMAN,
          Locale.FRENCH,
          Locale.ITALIAN,
          Locale.forLanguageTag("es"));

  private static final int CENTURY = 2000;

  private Days() {}

  /** Whether it is a day in one order or another. */
  static boolean isDay(String text) {
    return Stream.of(DayOrder.values()).anyMatch(order -> read(text, order).isPresent());
  }

  /**
   * The orders in which every one of the days can be read; all of them where none needs an order.
   * What is no day in any order says nothing.
   */
  static List<DayOrder> orders(List<String> days) {
    List<String> meant = days.stream().filter(Days::isDay).toList();
    List<DayOrder> fitting = new ArrayList<>();
    for (DayOrder order : DayOrder.values()) {
      if (meant.stream().allMatch(day -> read(day, order).isPresent())) {
        fitting.add(order);
      }
    }
    return fitting;
  }

  /** Whether it is another day in another order. */
  static boolean needsOrder(List<String> days) {
    List<DayOrder> orders = orders(days);
    return orders.size() != 1
        && days.stream()
            .filter(Days::isDay)
            .anyMatch(
                day -> orders.stream().map(order -> read(day, order)).distinct().count() != 1);
  }

  /**
   * The day in the order that was said; without one, only a day that is the same in every order.
   */
  static Optional<LocalDate> read(String text, Optional<DayOrder> said) {
    if (said.isPresent()) {
      return read(text, said.get());
    }
    List<LocalDate> days =
        Stream.of(DayOrder.values())
            .flatMap(order -> read(text, order).stream())
            .distinct()
            .toList();
    return days.size() == 1 ? Optional.of(days.get(0)) : Optional.empty();
  }

  /** The day; empty when it is none in that order. */
  static Optional<LocalDate> read(String text, DayOrder order) {
    Matcher numbers = NUMBERS.matcher(text.strip());
    if (numbers.matches()) {
      return numbers(numbers, order);
    }
    Matcher day = DAY_NAMED.matcher(text.strip());
    if (day.matches()) {
      return named(day.group(3), day.group(2), day.group(1));
    }
    Matcher month = MONTH_NAMED.matcher(text.strip());
    return month.matches()
        ? named(month.group(3), month.group(1), month.group(2))
        : Optional.empty();
  }

  private static Optional<LocalDate> numbers(Matcher parts, DayOrder order) {
    String first = parts.group(1);
    String second = parts.group(3);
    String third = parts.group(4);
    if (first.length() == 4) {
      return day(first, second, third);
    }
    boolean fourAtTheEnd = third.length() == 4;
    if (!fourAtTheEnd && third.length() != 2 || first.length() == 3) {
      return Optional.empty();
    }
    return switch (order) {
      case DAY_FIRST -> day(third, second, first);
      case MONTH_FIRST -> day(third, first, second);
      case YEAR_FIRST ->
          fourAtTheEnd || first.length() != 2 ? Optional.empty() : day(first, second, third);
    };
  }

  private static Optional<LocalDate> named(String year, String name, String day) {
    for (Locale language : LANGUAGES) {
      for (Month month : Month.values()) {
        String full = month.getDisplayName(TextStyle.FULL, language);
        if (full.toLowerCase(language).startsWith(name.toLowerCase(language))) {
          return day(year, Integer.toString(month.getValue()), day);
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<LocalDate> day(String year, String month, String day) {
    try {
      int number = Integer.parseInt(year);
      return Optional.of(
          LocalDate.of(
              year.length() <= 2 ? CENTURY + number : number,
              Integer.parseInt(month),
              Integer.parseInt(day)));
    } catch (DateTimeException none) {
      return Optional.empty();
    }
  }
}
