package rutbook.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Datum;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Reading;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.Value;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** A setting's readings and moves in words: always the number, the leg, the unit and the sense. */
public final class SettingWords {
  private static final String[] EIGHTHS = {"", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"};

  private final WindowWords words;

  public SettingWords(WindowWords words) {
    this.words = words;
  }

  /** The bare number: 14, 1¾, 335. */
  public String number(Amount amount) {
    BigDecimal value = amount.value();
    if (amount.dimension() == Dimension.TURNS && value.signum() >= 0) {
      BigDecimal eighths = value.multiply(BigDecimal.valueOf(8));
      if (eighths.stripTrailingZeros().scale() <= 0) {
        int all = eighths.intValueExact();
        boolean bare = all < 8 && all > 0;
        return (bare ? "" : Integer.toString(all / 8)) + EIGHTHS[all % 8];
      }
    }
    return value.toPlainString();
  }

  /** As it stands in the strip: clicks and turns bare, the rest with its unit. */
  public String brief(Amount amount) {
    return counted(amount) ? number(amount) : number(amount) + " " + amount.unit().symbol();
  }

  /** With its unit: 1 click, 1¾ turns, 335 mL. */
  public String amount(Amount amount) {
    if (!counted(amount)) {
      return brief(amount);
    }
    boolean one = amount.value().abs().compareTo(BigDecimal.ONE) <= 0;
    String key = amount.dimension() == Dimension.CLICKS ? "count.click" : "count.turn";
    return words.text(one ? key : key + "s", number(amount));
  }

  private static boolean counted(Amount amount) {
    return amount.dimension() == Dimension.CLICKS || amount.dimension() == Dimension.TURNS;
  }

  /** The reading, such as {@code 14 out}, {@code left 12, right 14 out}, {@code 335 mL}. */
  public String reading(Setting setting, Reading reading) {
    if (!(reading instanceof Reading.Pair pair) || sameLegs(pair)) {
      return withDatum(setting, value(reading.values().get(0)));
    }
    return withDatum(setting, words.text("reading.legs", value(pair.left()), value(pair.right())));
  }

  /** As it stands in the strip, both legs where they differ. */
  public String brief(Reading reading) {
    if (reading instanceof Reading.Pair pair && !sameLegs(pair)) {
      return words.text("reading.legs.brief", value(pair.left()), value(pair.right()));
    }
    return value(reading.values().get(0));
  }

  private static boolean sameLegs(Reading.Pair pair) {
    Optional<Amount> left = pair.left().known();
    Optional<Amount> right = pair.right().known();
    return left.isPresent() && right.isPresent()
        ? left.get().sameQuantity(right.get())
        : left.isEmpty() && right.isEmpty();
  }

  private String value(Value value) {
    return value.known().map(this::brief).orElseGet(() -> words.text("reading.unknown"));
  }

  private String withDatum(Setting setting, String text) {
    Datum datum = setting.scale().datum();
    boolean plain = datum == Datum.ABSOLUTE || text.equals(words.text("reading.unknown"));
    return plain ? text : words.text("datum." + datum.name(), text);
  }

  /** From one reading to another, without the sense: {@code 12 → 14 out}. */
  public String move(Setting setting, Reading from, Reading to) {
    boolean alike = alike(from) && alike(to);
    if (alike) {
      return withDatum(setting, value(from.values().get(0)) + " → " + value(to.values().get(0)));
    }
    return brief(from) + " → " + reading(setting, to);
  }

  private static boolean alike(Reading reading) {
    return !(reading instanceof Reading.Pair pair) || sameLegs(pair);
  }

  /** How far and in which sense: {@code 2 softer}, {@code ¼ turn slower}, {@code 5 mL firmer}. */
  public String sense(Setting setting, Reading from, Reading to) {
    List<String> legs = new ArrayList<>();
    for (int i = 0; i < Math.min(from.values().size(), to.values().size()); i++) {
      Optional<Amount> a = from.values().get(i).known();
      Optional<Amount> b = to.values().get(i).known();
      legs.add(a.isPresent() && b.isPresent() ? sense(setting, a.get(), b.get()) : "");
    }
    if (legs.stream().distinct().count() == 1) {
      return legs.get(0);
    }
    return words.text("sense.legs", orSame(legs.get(0)), orSame(legs.get(1)));
  }

  private String orSame(String sense) {
    return sense.isEmpty() ? words.text("sense.same") : sense;
  }

  private String sense(Setting setting, Amount from, Amount to) {
    Optional<Sense> sense = setting.sense(from, to);
    if (sense.isEmpty()) {
      return "";
    }
    Amount difference = to.minus(from);
    Amount size =
        difference.withValue(difference.value().abs().setScale(3, RoundingMode.HALF_EVEN));
    String amount = size.dimension() == Dimension.CLICKS ? number(size) : amount(size);
    return amount + " " + words.name(sense.get());
  }

  /** The whole move: {@code 12 → 14 out (2 softer)}. */
  public String change(Setting setting, Reading from, Reading to) {
    String sense = sense(setting, from, to);
    String move = move(setting, from, to);
    return sense.isEmpty() ? move : move + " (" + sense + ")";
  }

  /** Why an amount was refused, with the limit in it. */
  public String refusal(Setting setting, NotebookException refused) {
    return switch (refused.fault()) {
      case BELOW_LEAST, ABOVE_MOST, OFF_THE_STEPS ->
          words.text(
              "refused." + refused.fault().name(),
              setting.name(),
              amount((Amount) refused.facts().get(1)),
              amount((Amount) refused.facts().get(2)));
      case WRONG_UNIT ->
          words.text(
              "refused.WRONG_UNIT",
              setting.name(),
              refused.facts().get(1),
              setting.scale().step().unit().symbol());
      default -> words.text("refused.other", refused.getMessage());
    };
  }
}
