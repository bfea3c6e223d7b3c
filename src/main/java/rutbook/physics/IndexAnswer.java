package rutbook.physics;

/** What ASTM D2270 says of an oil: its index, or why there is none. */
public sealed interface IndexAnswer permits ViscosityIndex, IndexAnswer.None {

  /** There is no index, and why. */
  record None(Why why) implements IndexAnswer {}

  /** Why there is no index. */
  enum Why {
    /** The standard does not define it below 2 mm²/s at 100 °C. */
    TOO_THIN,
    /** An index up to 100 needs a row of the standard's table that is not carried here. */
    ROW_NOT_CARRIED
  }
}
