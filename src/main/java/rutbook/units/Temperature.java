package rutbook.units;

import java.math.BigDecimal;
import java.util.List;

/** Temperatures; SI kelvin. */
public enum Temperature implements Unit {
  CELSIUS("°C", "1", "1", "273.15", "c", "degc", "deg c"),
  FAHRENHEIT("°F", "5", "9", "459.67", "f", "degf", "deg f"),
  KELVIN("K", "1", "1", "0", "kelvin");

  private final String symbol;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final BigDecimal offset;
  private final List<String> alsoTyped;

  Temperature(
      String symbol, String numerator, String denominator, String offset, String... alsoTyped) {
    this.symbol = symbol;
    this.numerator = new BigDecimal(numerator);
    this.denominator = new BigDecimal(denominator);
    this.offset = new BigDecimal(offset);
    this.alsoTyped = List.of(alsoTyped);
  }

  @Override
  public String symbol() {
    return symbol;
  }

  @Override
  public Dimension dimension() {
    return Dimension.TEMPERATURE;
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

  @Override
  public BigDecimal offset() {
    return offset;
  }
}
