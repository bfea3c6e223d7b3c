package rutbook.units;

import java.math.BigDecimal;
import java.util.List;

/** Clicks of an adjuster, counted the way its datum says. */
public enum ClickUnit implements Unit {
  /** What is counted from a stop may be typed with its direction: 14 out. */
  CLICK(
      "clicks",
      "1",
      "1",
      "click",
      "clk",
      "c",
      "out",
      "in",
      "clicks out",
      "clicks in",
      "click out",
      "Klick",
      "Klicks",
      "offen",
      "zu",
      "Klicks offen",
      "Klicks zu",
      "Klick offen");

  private final String symbol;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final List<String> alsoTyped;

  ClickUnit(String symbol, String numerator, String denominator, String... alsoTyped) {
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
    return Dimension.CLICKS;
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
