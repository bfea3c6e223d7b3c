package rutbook.json;

import java.io.IOException;
import java.util.List;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.Unit;

/**
 * An amount as the rider wrote it, {@code "9.5 fl oz"}: a plain number, a space, the unit's sign.
 */
final class AmountShape implements Shape<Amount> {
  static final AmountShape AMOUNT = new AmountShape();

  private static final Repeats.Making<Amount> PARSED = AmountShape::parsed;

  private AmountShape() {}

  @Override
  public Amount read(In in) throws IOException {
    return in.repeated(PARSED, Expected.AMOUNT);
  }

  private static Amount parsed(In in, String text) {
    try {
      return Amount.parseExact(text);
    } catch (AmountException fault) {
      boolean unit = fault.fault() == AmountException.Fault.UNKNOWN_UNIT;
      List<String> signs = unit ? Unit.all().stream().map(Unit::symbol).toList() : List.of();
      Kind kind = unit ? Kind.UNKNOWN_WORD : Kind.BAD_VALUE;
      throw in.fault(kind, text, Expected.AMOUNT, signs, fault);
    }
  }

  @Override
  public void write(Amount value, Out out) throws IOException {
    out.text(value.toString());
  }
}
