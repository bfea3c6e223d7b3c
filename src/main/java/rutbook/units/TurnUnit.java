package rutbook.units;

import java.math.BigDecimal;
import java.util.List;

/** Turns of an adjuster without clicks, counted the way its datum says. */
public enum TurnUnit implements Unit {
  TURN(
      "turns",
      "1",
      "1",
      "turn",
      "t",
      "rev",
      "out",
      "in",
      "turns out",
      "turns in",
      "turn out",
      "Umdr",
      "Umdrehung",
      "Umdrehungen",
      "offen",
      "zu",
      "Umdr offen",
      "Umdr zu",
      "Umdrehungen offen");

  private final String symbol;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final List<String> alsoTyped;

  TurnUnit(String symbol, String numerator, String denominator, String... alsoTyped) {
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
    return Dimension.TURNS;
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
