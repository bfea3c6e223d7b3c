package rutbook.units;

import java.math.BigDecimal;
import java.util.List;

/** Lengths; SI metre. */
public enum Length implements Unit {
  MILLIMETRE("mm", "0.001", "1", "millimetre", "millimetres", "millimeter", "millimeters"),
  /** International inch: 25.4 mm, exact. */
  INCH("in", "0.0254", "1", "inch", "inches", "\"", "″"),
  METRE("m", "1", "1", "metre", "metres", "meter", "meters"),
  FOOT("ft", "0.3048", "1", "foot", "feet", "'");

  private final String symbol;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final List<String> alsoTyped;

  Length(String symbol, String numerator, String denominator, String... alsoTyped) {
    this.symbol = symbol;
    this.numerator = new BigDecimal(numerator);
    this.denominator = new BigDecimal(denominator);
    this.alsoTyped = List.of(alsoTyped);
  }

  @Override
  public String symbol() {
    return symbol;
  }

  @Override
  public Dimension dimension() {
    return Dimension.LENGTH;
  }

  @Override
  public List<String> alsoTyped() {
    return alsoTyped;
  }

  @Override
  public BigDecimal numerator() {
    return numerator;
  }

  @Override
  public BigDecimal denominator() {
    return denominator;
  }
}
