package rutbook.units;

import java.math.BigDecimal;
import java.util.List;

/** Tightening torques; SI newton metre. */
public enum Torque implements Unit {
  NEWTON_METRE("N·m", "1", "1", "nm", "n m", "n.m", "n-m"),
  /** 0.3048 m x 4.4482216152605 N, exact. */
  POUND_FORCE_FOOT(
      "lbf·ft",
      "1.3558179483314004",
      "1",
      "ft-lb",
      "ftlb",
      "ft lb",
      "lb-ft",
      "lbft",
      "lb ft",
      "ft-lbs",
      "ft-lbf",
      "ft·lb",
      "lbf ft",
      "lbf-ft",
      "ft lbf"),
  /** 0.0254 m x 4.4482216152605 N, exact. */
  POUND_FORCE_INCH(
      "lbf·in", "0.1129848290276167", "1", "in-lb", "inlb", "in lb", "in-lbs", "lb-in", "lbf in"),
  KILOGRAM_FORCE_METRE("kgf·m", "9.80665", "1", "kgm", "kg-m", "kgf m");

  private final String symbol;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final List<String> alsoTyped;

  Torque(String symbol, String numerator, String denominator, String... alsoTyped) {
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
    return Dimension.TORQUE;
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
