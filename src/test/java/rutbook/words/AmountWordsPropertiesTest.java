package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import rutbook.notebook.Range;
import rutbook.units.Amount;
import rutbook.units.AmountText;
import rutbook.units.Display;
import rutbook.units.Edge;
import rutbook.units.Shown;
import rutbook.units.Unit;

/** What is shown reads back, and a limit that is shown never lies outside the limit that binds. */
class AmountWordsPropertiesTest {
  private static final int TRIES = 2000;

  @Provide
  Arbitrary<Amount> amounts() {
    Arbitrary<BigDecimal> numbers =
        Arbitraries.bigDecimals()
            .between(new BigDecimal("-9999"), new BigDecimal("9999"))
            .ofScale(4)
            .edgeCases(cases -> cases.add(BigDecimal.ZERO, BigDecimal.ONE, new BigDecimal("0.25")));
    return Combinators.combine(numbers, Arbitraries.of(Unit.all())).as(Amount::new);
  }

  /** Any unit for any kind of quantity, not just the two usual choices. */
  @Provide
  Arbitrary<Display> displays() {
    return Arbitraries.of(Unit.all())
        .list()
        .ofMaxSize(6)
        .map(
            chosen -> {
              Display display = Display.METRIC;
              for (Unit unit : chosen) {
                display = display.with(unit);
              }
              return display;
            });
  }

  @Provide
  Arbitrary<Locale> locales() {
    return Arbitraries.of(Locale.UK, Locale.US, Locale.GERMANY, Locale.FRANCE, Locale.ROOT);
  }

  @Property(tries = TRIES, seed = "19590701")
  void whatIsShownReadsBackToItsLastDigit(
      @ForAll("amounts") Amount amount,
      @ForAll("displays") Display display,
      @ForAll("locales") Locale locale) {
    Unit unit = display.unit(amount.dimension());
    Amount back = read(new Phrases(locale, display).amounts().amount(amount), unit, locale);

    assertThat(back.unit()).isEqualTo(unit);
    if (amount.unit() == unit) {
      assertThat(back).isEqualTo(amount);
      return;
    }
    Shown shown = display.shown(amount, Edge.NONE);
    BigDecimal half = BigDecimal.ONE.movePointLeft(shown.number().scale()).divide(TWO);
    assertThat(Math.abs(amount.doubleIn(unit) - back.value().doubleValue()))
        .isLessThanOrEqualTo(half.doubleValue() * (1 + 1e-9));
  }

  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  private static Amount read(String text, Unit unit, Locale locale) {
    return AmountText.parse(text, unit, locale);
  }

  @Property(tries = TRIES, seed = "19590702")
  void aLimitThatIsShownNeverLiesOutsideTheLimitThatBinds(
      @ForAll("amounts") Amount one,
      @ForAll("amounts") Amount other,
      @ForAll("displays") Display display) {
    Range limits = range(one, other);
    Unit unit = display.unit(limits.least().dimension());
    AmountWords words = Phrases.english(display).amounts();

    assertThat(read(words.least(limits.least()), unit, Locale.UK).compareQuantity(limits.least()))
        .isNotNegative();
    assertThat(read(words.most(limits.most()), unit, Locale.UK).compareQuantity(limits.most()))
        .isNotPositive();
    display
        .beside(limits.least(), Edge.LEAST)
        .ifPresent(
            shown -> assertThat(compare(shown, limits.least())).as("%s", shown).isNotNegative());
    display
        .beside(limits.most(), Edge.MOST)
        .ifPresent(
            shown -> assertThat(compare(shown, limits.most())).as("%s", shown).isNotPositive());
  }

  @Property(tries = TRIES, seed = "19590703")
  void limitsThatAreShownTogetherAreInsideAndNeverCross(
      @ForAll("amounts") Amount one,
      @ForAll("amounts") Amount other,
      @ForAll("displays") Display display) {
    Range limits = range(one, other);
    Shown.Pair mine = display.limits(limits.least(), limits.most());
    Shown.Pair beside = display.limitsBeside(limits.least(), limits.most()).orElse(mine);

    for (Shown.Pair shown : List.of(mine, beside)) {
      assertThat(compare(shown.least(), limits.least())).as("%s", shown).isNotNegative();
      assertThat(compare(shown.most(), limits.most())).as("%s", shown).isNotPositive();
      if (shown.least().unit() == shown.most().unit()) {
        assertThat(shown.least().number()).isLessThanOrEqualTo(shown.most().number());
      }
    }
  }

  @Property(tries = TRIES, seed = "19590706")
  void whatKeepsItsLimitsIsNeverSaidToPassThem(
      @ForAll("amounts") Amount one,
      @ForAll("amounts") Amount other,
      @ForAll("amounts") Amount third,
      @ForAll("displays") Display display) {
    Range limits = range(one, other);
    for (Amount each :
        List.of(one, limits.least(), limits.most(), limits.hold(sameKind(one, third)))) {
      assertInside(display.shownInside(each, limits.least(), limits.most()), limits);
      display
          .besideInside(each, limits.least(), limits.most())
          .ifPresent(shown -> assertInside(shown, limits));
    }
  }

  private static void assertInside(Shown shown, Range limits) {
    assertThat(compare(shown, limits.least())).as("%s", shown).isNotNegative();
    assertThat(compare(shown, limits.most())).as("%s", shown).isNotPositive();
  }

  /** The second amount in the kind of the first, so that the two make a range. */
  private static Range range(Amount one, Amount other) {
    Amount same = sameKind(one, other);
    return one.compareQuantity(same) <= 0 ? new Range(one, same) : new Range(same, one);
  }

  private static Amount sameKind(Amount one, Amount other) {
    List<Unit> units = Unit.of(one.dimension());
    int place = Math.floorMod(other.value().intValue(), units.size());
    return new Amount(other.value(), units.get(place));
  }

  private static int compare(Shown shown, Amount amount) {
    return new Amount(shown.number(), shown.unit()).compareQuantity(amount);
  }

  @Property(tries = TRIES, seed = "19590704")
  void aDifferenceHasTheSignOfTheDifference(
      @ForAll("amounts") Amount difference, @ForAll("displays") Display display) {
    String said = Phrases.english(display).amounts().signed(difference);
    char first = said.charAt(0);
    int sign = first == '+' ? 1 : first == '−' ? -1 : 0;
    assertThat(sign).isEqualTo(difference.value().signum());
    assertThat(display.step(difference).unit()).isEqualTo(display.unit(difference.dimension()));
  }

  @Property(tries = TRIES, seed = "19590705")
  void commaAndPointBothPartDecimalsWhereTheyCannotPartThousands(
      @ForAll("amounts") Amount amount, @ForAll("locales") Locale locale) {
    BigDecimal tenths = amount.value().setScale(2, java.math.RoundingMode.DOWN);
    String written = tenths.toPlainString();
    Amount expected = new Amount(tenths, amount.unit());
    for (String text : List.of(written, written.replace('.', ','))) {
      assertThat(AmountText.parse(text, amount.unit(), locale)).isEqualTo(expected);
    }
  }
}
