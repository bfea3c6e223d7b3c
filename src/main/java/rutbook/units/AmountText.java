package rutbook.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rutbook.units.AmountException.Fault;

/**
 * Reads what people type into a field: 280ml, 9 1/2 oz, 9½ fl oz, 18 ft-lb, 1,5 turns.
 *
 * <p>A comma or point before exactly three digits, where the locale does not part decimals with it,
 * could part thousands: it is refused, not guessed.
 */
public final class AmountText {
  private static final MathContext KEPT =
      new MathContext(Amount.MOST_DIGITS, RoundingMode.HALF_EVEN);
  private static final int MOST_NUMBER = 40;

  private static final Pattern SPACES = Pattern.compile("[\\h\\s]+");
  private static final Pattern INVISIBLE = Pattern.compile("\\p{Cf}");
  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d{1,10})[ -])? ?(\\d{1,3}) ?/ ?(\\d{1,3})(?![\\d.,/])");
  private static final Pattern DECIMAL = Pattern.compile("(\\d*+)(?:([.,])(\\d*+))?");
  private static final Pattern EXPONENT = Pattern.compile("(?i)e[+-]?\\d.*");

  private final String typed;
  private final Unit fallback;
  private final char decimalSign;

  private AmountText(String typed, Unit fallback, Locale locale) {
    this.typed = typed;
    this.fallback = fallback;
    this.decimalSign = decimalSign(locale);
  }

  /** The point or comma of a locale; a point where it uses neither. */
  public static char decimalSign(Locale locale) {
    return DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ',' ? ',' : '.';
  }

  /**
   * Reads an amount of the fallback's kind of quantity; a bare number takes the fallback as its
   * unit.
   *
   * @throws AmountException with the fault and what was typed
   */
  public static Amount parse(String typed, Unit fallback, Locale locale) {
    return new AmountText(typed, fallback, locale).parse();
  }

  /** The same where a point parts the decimals. */
  public static Amount parse(String typed, Unit fallback) {
    return parse(typed, fallback, Locale.ROOT);
  }

  /** Reads an amount of the wanted kind; a bare number takes the unit that the rider sees. */
  public static Amount parse(String typed, Dimension wanted, Display display, Locale locale) {
    return parse(typed, display.unit(wanted), locale);
  }

  private Amount parse() {
    String text = tidy(typed);
    if (text.isEmpty()) {
      throw fault(Fault.EMPTY);
    }
    boolean negative = text.charAt(0) == '-';
    String unsigned = negative || text.charAt(0) == '+' ? text.substring(1).strip() : text;
    Matcher fraction = FRACTION.matcher(unsigned);
    boolean isFraction = fraction.lookingAt();
    Matcher decimal = DECIMAL.matcher(unsigned);
    BigDecimal number;
    if (isFraction) {
      number = fraction(fraction);
    } else {
      decimal.lookingAt();
      number = decimal(decimal);
    }
    String rest = unsigned.substring(isFraction ? fraction.end() : decimal.end()).strip();
    Unit unit = unit(rest);
    try {
      return new Amount(negative ? number.negate() : number, unit);
    } catch (AmountException e) {
      throw fault(e.fault());
    }
  }

  /** Plain spaces and signs; {@code 9½} becomes {@code 9 1/2}. */
  private static String tidy(String typed) {
    String visible = INVISIBLE.matcher(typed).replaceAll("");
    StringBuilder text = new StringBuilder(visible.length());
    for (int i = 0; i < visible.length(); i++) {
      char c = visible.charAt(i);
      switch (c) {
        case '−', '–', '‐', '‑', '﹣', '-' -> text.append('-');
        case '⁄', '∕' -> text.append('/');
        default -> {
          if (Character.getType(c) == Character.OTHER_NUMBER) {
            text.append(' ').append(vulgar(c));
          } else {
            text.append(c);
          }
        }
      }
    }
    return SPACES.matcher(text).replaceAll(" ").strip();
  }

  private static String vulgar(char c) {
    String parts = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKC);
    return parts.indexOf('⁄') > 0 ? parts.replace('⁄', '/') : String.valueOf(c);
  }

  private BigDecimal fraction(Matcher parts) {
    BigDecimal top = new BigDecimal(parts.group(2));
    BigDecimal bottom = new BigDecimal(parts.group(3));
    boolean mixed = parts.group(1) != null;
    if (bottom.signum() == 0 || mixed && top.compareTo(bottom) >= 0) {
      throw fault(Fault.NO_NUMBER);
    }
    BigDecimal whole = mixed ? new BigDecimal(parts.group(1)) : BigDecimal.ZERO;
    return whole.multiply(bottom).add(top).divide(bottom, KEPT);
  }

  private BigDecimal decimal(Matcher parts) {
    String whole = parts.group(1);
    String decimals = parts.group(3) == null ? "" : parts.group(3);
    if (whole.isEmpty() && decimals.isEmpty()) {
      throw fault(Fault.NO_NUMBER);
    }
    if (whole.length() + decimals.length() > MOST_NUMBER) {
      throw fault(Fault.TOO_MANY_DIGITS);
    }
    if (parts.group(2) != null && mayPartThousands(whole, parts.group(2).charAt(0), decimals)) {
      throw fault(Fault.UNCLEAR_NUMBER);
    }
    return new BigDecimal("0" + whole + "." + decimals + "0");
  }

  private boolean mayPartThousands(String whole, char sign, String decimals) {
    return sign != decimalSign
        && decimals.length() == 3
        && !whole.isEmpty()
        && whole.length() <= 3
        && whole.charAt(0) != '0';
  }

  private Unit unit(String rest) {
    if (rest.isEmpty()) {
      return fallback;
    }
    char first = rest.charAt(0);
    if (Character.isDigit(rest.codePointAt(0))
        || Character.getType(first) == Character.OTHER_NUMBER
        || first == '.'
        || first == ','
        || first == '/'
        || EXPONENT.matcher(rest).matches()) {
      throw fault(Fault.NO_NUMBER);
    }
    if (first == '-' || rest.endsWith("-")) {
      throw fault(Fault.UNKNOWN_UNIT);
    }
    Optional<Unit> found = Spellings.unit(rest, fallback);
    if (found.isEmpty()) {
      throw fault(Spellings.isKnown(rest) ? Fault.OTHER_KIND : Fault.UNKNOWN_UNIT);
    }
    return found.get();
  }

  private AmountException fault(Fault fault) {
    return new AmountException(fault, typed.strip());
  }
}
