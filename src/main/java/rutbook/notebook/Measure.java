package rutbook.notebook;

/**
 * What an oil fill is measured as: a volume, or the distance from the tube top to the oil with the
 * spring out and the fork collapsed, where a smaller number is more oil.
 */
public enum Measure {
  VOLUME,
  LEVEL
}
