package rutbook.json;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import rutbook.notebook.Range;
import rutbook.units.Amount;
import rutbook.units.Unit;

/**
 * Amounts of an answer: {@code {"value": 335, "unit": "mL"}}, as the rider wrote them, or converted
 * to the units that were asked for and rounded to {@value #DECIMALS} decimals, limits inwards.
 */
final class AmountFacts {
  private static final int DECIMALS = 6;

  static final Writes<Amount> AMOUNT = (amount, out) -> write(amount, out, RoundingMode.HALF_EVEN);

  /** A difference: of temperatures it has no offset. */
  static final Writes<Amount> STEP =
      (step, out) -> {
        Unit unit = out.unit(step.unit());
        Amount shown = unit == step.unit() ? step : new Amount(BigDecimal.ZERO, unit).plus(step);
        write(rounded(shown), out);
      };

  static final Facts<Range> LIMITS =
      Facts.line(Range.class)
          .with(
              "least",
              (Amount least, Out out) -> write(least, out, RoundingMode.CEILING),
              Range::least)
          .with(
              "most", (Amount most, Out out) -> write(most, out, RoundingMode.FLOOR), Range::most);

  private AmountFacts() {}

  private static Amount rounded(Amount amount) {
    return amount.value().scale() <= DECIMALS
        ? amount
        : amount.withValue(amount.value().setScale(DECIMALS, RoundingMode.HALF_EVEN));
  }

  private static void write(Amount amount, Out out, RoundingMode rounding) throws IOException {
    write(amount.in(out.unit(amount.unit()), DECIMALS, rounding), out);
  }

  private static void write(Amount amount, Out out) throws IOException {
    out.together(
        true,
        same -> {
          out.generator().writeStartObject();
          out.field("value");
          out.generator().writeNumber(amount.value().toPlainString());
          out.field("unit");
          out.text(amount.unit().symbol());
          out.generator().writeEndObject();
        });
  }
}
