package rutbook.notebook;

/** Which way round a motion ratio is written; a ratio without it means nothing. */
public enum RatioConvention {
  SPRING_OVER_WHEEL,
  WHEEL_OVER_SPRING
}
