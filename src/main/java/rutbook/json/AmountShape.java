package rutbook.json;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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

  private static final Pattern FORM = Pattern.compile("(-?(?:0|[1-9]\\d*)(?:\\.\\d+)?) (\\S.*)");
  private static final int LONGEST = 60;
  private static final Map<String, Unit> BY_SIGN =
      Unit.all().stream().collect(Collectors.toMap(Unit::symbol, Function.identity()));

  private AmountShape() {}

  @Override
  public Amount read(In in) throws IOException {
    return amount(in, in.text(Expected.AMOUNT));
  }

  /** The amount of a text that was read already. */
  static Amount amount(In in, String text) {
    Amount known = in.amounts().get(text);
    if (known != null) {
      return known;
    }
    Amount parsed = parsed(in, text);
    in.amounts().put(text, parsed);
    return parsed;
  }

  private static Amount parsed(In in, String text) {
    Matcher matcher = FORM.matcher(text);
    if (text.length() > LONGEST || !matcher.matches()) {
      throw in.fault(Kind.BAD_VALUE, text, Expected.AMOUNT, List.of());
    }
    Unit unit = BY_SIGN.get(matcher.group(2));
    if (unit == null) {
      List<String> signs = Unit.all().stream().map(Unit::symbol).toList();
      throw in.fault(Kind.UNKNOWN_WORD, matcher.group(2), Expected.AMOUNT, signs);
    }
    try {
      return new Amount(new BigDecimal(matcher.group(1)), unit);
    } catch (AmountException fault) {
      throw in.fault(Kind.BAD_VALUE, text, Expected.AMOUNT, List.of(), fault);
    }
  }

  @Override
  public void write(Amount value, Out out) throws IOException {
    out.text(value.toString());
  }
}
