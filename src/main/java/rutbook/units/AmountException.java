package rutbook.units;

/** An amount that cannot be: says which fault, and what stood there. */
public final class AmountException extends IllegalArgumentException {
  private static final int MOST_SHOWN = 40;
  private static final long serialVersionUID = 1L;

  /** What is wrong, for the sentence that {@code words} makes of it. */
  public enum Fault {
    /** Nothing was written. */
    EMPTY,
    /** No number could be read. */
    NO_NUMBER,
    /** A comma or point that may part thousands as well as decimals. */
    UNCLEAR_NUMBER,
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
    if (written.length() <= MOST_SHOWN) {
      return written;
    }
    boolean inPair = Character.isHighSurrogate(written.charAt(MOST_SHOWN - 1));
    return written.substring(0, inPair ? MOST_SHOWN - 1 : MOST_SHOWN) + "…";
  }

  public Fault fault() {
    return fault;
  }

  /** What stood there; cut after {@value #MOST_SHOWN} characters. */
  public String written() {
    return written;
  }
}
