package rutbook.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Collection;
import java.util.List;
import rutbook.drawing.ChartName;
import rutbook.drawing.ChartText;
import rutbook.figures.Assumed;
import rutbook.figures.Figure;
import rutbook.figures.Need;
import rutbook.figures.Quantity;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Length;

/** What figures say of themselves: shares with their sign, what was assumed, what is missing. */
public final class FigureWords {
  private static final String AREA = "Figures";

  private final Phrases phrases;

  public FigureWords(Phrases phrases) {
    this.phrases = phrases;
  }

  /** A plain phrase of this area. */
  public String say(String key, Object... facts) {
    return phrases.say(AREA, key, facts);
  }

  /** A change as a share with its sign, to a tenth of a per cent below ten: "−0.6 %", "+12 %". */
  public String share(double share) {
    double size = Math.abs(share) * 100;
    BigDecimal rounded =
        BigDecimal.valueOf(size).setScale(size < 9.95 ? 1 : 0, RoundingMode.HALF_UP);
    String text = phrases.say(AREA, "percent", phrases.amounts().number(rounded.doubleValue(), 1));
    if (rounded.signum() == 0) {
      return text;
    }
    return phrases.say("Amounts", share > 0 ? "plus" : "minus", text);
  }

  /** A part of a whole without a sign: "97 %". */
  public String part(double part) {
    return phrases.say(AREA, "percent", phrases.amounts().number(part * 100, 0));
  }

  /** Numbers under numbers, from a column on. */
  Table aligned(Table table, int first) {
    char point = DecimalFormatSymbols.getInstance(phrases.locale()).getDecimalSeparator();
    return table.aligned(first, point);
  }

  /** A height above the sea, in metres or feet. */
  public String altitude(Amount altitude) {
    boolean feet = phrases.display().unit(Dimension.LENGTH) == Length.INCH;
    Amount shown = altitude.in(feet ? Length.FOOT : Length.METRE, 0, RoundingMode.HALF_UP);
    return phrases.say(
        "Amounts",
        "measured",
        phrases.amounts().number(shown.value().doubleValue(), 0),
        shown.unit().symbol());
  }

  /** What is written on charts: names of their parts, and numbers. */
  public ChartText onCharts() {
    return new ChartText(this::chart, phrases.amounts().numerals());
  }

  private String chart(ChartName name) {
    return phrases.say(AREA, "Chart." + name.name());
  }

  public String quantity(Quantity quantity) {
    return phrases.say(AREA, "Quantity." + quantity.name());
  }

  /** What is missing and why: "tube bore: not on the sheet". */
  public String need(Need need) {
    String quantity = quantity(need.quantity());
    return phrases.say(
        AREA,
        "Why." + need.why().name(),
        need.leg()
            .map(leg -> phrases.say(AREA, "leg", quantity, phrases.name(leg)))
            .orElse(quantity));
  }

  /** Everything that is missing, on one line. */
  public String needs(List<Need> needs) {
    return String.join("; ", needs.stream().map(this::need).distinct().toList());
  }

  /** What was taken for granted, and what would make it exact. */
  public String assumed(Assumed assumed) {
    return phrases.say(AREA, "Assumed." + assumed.name());
  }

  /** What was assumed for some figures, each once, in a fixed order. */
  public List<String> assumed(Collection<Figure<?>> figures) {
    return figures.stream()
        .flatMap(figure -> figure.assumed().stream())
        .distinct()
        .sorted()
        .map(this::assumed)
        .toList();
  }
}
