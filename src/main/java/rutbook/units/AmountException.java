package rutbook.units;

/** An amount that cannot be: says which fault, and what stood there. */
public final class AmountException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** What is wrong, for the sentence that {@code words} makes of it. */
  public enum Fault {
    /** Nothing was written. */
    EMPTY,
    /** No number could be read. */
    NO_NUMBER,
    /** The unit is not known. */
    UNKNOWN_UNIT,
    /** The unit belongs to another kind of quantity. */
    OTHER_KIND,
    /** More digits than an amount keeps. */
    TOO_MANY_DIGITS,
    /** Outside what any amount of this notebook can be. */
    TOO_LARGE_OR_SMALL
  }

  private final Fault fault;
  private final String written;

  public AmountException(Fault fault, String written) {
    super(fault + ": " + shortened(written));
    this.fault = fault;
    this.written = shortened(written);
  }

  private static String shortened(String written) {
    return written.length() <= 40 ? written : written.substring(0, 40) + "…";
  }

  public Fault fault() {
    return fault;
  }

  public String written() {
    return written;
  }
}
