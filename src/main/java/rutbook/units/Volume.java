package rutbook.units;

import java.math.BigDecimal;
import java.util.List;

/** Volumes of oil; SI cubic metre. */
public enum Volume implements Unit {
  MILLILITRE(
      "mL",
      "0.000001",
      "1",
      "ml",
      "cc",
      "cm3",
      "cm³",
      "millilitre",
      "millilitres",
      "milliliter",
      "milliliters"),
  /** US fluid ounce: 231 cubic inches / 128, exact. */
  US_FLUID_OUNCE(
      "fl oz",
      "0.0000295735295625",
      "1",
      "floz",
      "oz",
      "us fl oz",
      "ounce",
      "ounces",
      "fluid ounces"),
  /** Imperial fluid ounce: 4.54609 L / 160, exact. */
  IMPERIAL_FLUID_OUNCE(
      "imp fl oz",
      "0.0000284130625",
      "1",
      "imp oz",
      "uk fl oz",
      "imperial fl oz",
      /* Read as these only where they are the unit of the field. */
      "oz",
      "ounce",
      "ounces",
      "fluid ounces"),
  LITRE("L", "0.001", "1", "l", "litre", "liter", "litres", "liters");

  private final String symbol;
  private final BigDecimal numerator;
  private final BigDecimal denominator;
  private final List<String> alsoTyped;

  Volume(String symbol, String numerator, String denominator, String... alsoTyped) {
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
    return Dimension.VOLUME;
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
