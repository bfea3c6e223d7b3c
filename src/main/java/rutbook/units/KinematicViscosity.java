package rutbook.units;

import java.math.BigDecimal;
import java.util.List;

/** Kinematic viscosities; SI square metre per second. */
public enum KinematicViscosity implements Unit {
  SQUARE_MILLIMETRE_PER_SECOND("mm²/s", "0.000001", "1", "mm2/s", "cst", "centistokes");

  private final String symbol;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final List<String> alsoTyped;

  KinematicViscosity(String symbol, String numerator, String denominator, String... alsoTyped) {
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
    return Dimension.KINEMATIC_VISCOSITY;
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
