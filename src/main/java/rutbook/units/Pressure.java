package rutbook.units;

import java.math.BigDecimal;
import java.util.List;

/** Gauge pressures unless said otherwise; SI pascal. */
public enum Pressure implements Unit {
  KILOPASCAL("kPa", "1000", "1", "kpa"),
  BAR("bar", "100000", "1", "bars"),
  /** Pound-force over a square inch, exact. */
  PSI("psi", "4.4482216152605", "0.00064516", "lbf/in2", "lbf/in²", "lb/in2"),
  MEGAPASCAL("MPa", "1000000", "1", "mpa"),
  KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE("kgf/cm²", "98066.5", "1", "kgf/cm2", "kg/cm2", "kg/cm²");

  private final String symbol;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final List<String> alsoTyped;

  Pressure(String symbol, String numerator, String denominator, String... alsoTyped) {
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
    return Dimension.PRESSURE;
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
