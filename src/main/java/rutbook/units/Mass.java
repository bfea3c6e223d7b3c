package rutbook.units;

import java.math.BigDecimal;
import java.util.List;

/** Masses; SI kilogram. */
public enum Mass implements Unit {
  KILOGRAM("kg", "1", "1", "kgs", "kilo", "kilos"),
  /** International avoirdupois pound, exact. */
  POUND("lb", "0.45359237", "1", "lbs", "pound", "pounds");

  private final String symbol;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final List<String> alsoTyped;

  Mass(String symbol, String numerator, String denominator, String... alsoTyped) {
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
    return Dimension.MASS;
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
