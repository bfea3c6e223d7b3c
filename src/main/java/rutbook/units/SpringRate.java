package rutbook.units;

import java.math.BigDecimal;
import java.util.List;

/** Spring rates; SI newton per metre. */
public enum SpringRate implements Unit {
  NEWTON_PER_MILLIMETRE("N/mm", "1000", "1", "nmm", "n per mm"),
  /** 0.45359237 kg x 9.80665 m/s² over 0.0254 m, exact. */
  POUND_FORCE_PER_INCH(
      "lbf/in", "4.4482216152605", "0.0254", "lb/in", "lbs/in", "lbin", "lb per in"),
  /** Standard gravity, exact. */
  KILOGRAM_FORCE_PER_MILLIMETRE("kgf/mm", "9806.65", "1", "kg/mm", "kgmm");

  private final String symbol;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final List<String> alsoTyped;

  SpringRate(String symbol, String numerator, String denominator, String... alsoTyped) {
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
    return Dimension.SPRING_RATE;
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
