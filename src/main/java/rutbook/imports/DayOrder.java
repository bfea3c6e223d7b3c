package rutbook.imports;

/** Which of day, month and year comes first where the numbers alone do not say. */
public enum DayOrder {
  DAY_FIRST,
  MONTH_FIRST,
  /** Only with years of two digits; a year of four digits says itself where it is. */
  YEAR_FIRST
}
