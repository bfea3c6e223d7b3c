package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Length;
import rutbook.units.Unit;

class SizesTest {
  @Test
  void anyTwoAmountsHaveADifferenceThatCanBeSaidInAnyUnit() {
    for (Unit unit : Unit.all()) {
      if (unit.dimension() == Dimension.TEMPERATURE) {
        continue; // nothing is set to a temperature
      }
      Amount most = Amount.of(1_000_000_000, unit);
      while (refused(most)) {
        most = most.withValue(most.value().movePointLeft(1));
      }
      Amount least = most.withValue(most.value().negate());
      Amount apart = most.minus(least);
      for (Unit other : Unit.of(unit.dimension())) {
        assertThat(apart.in(other, 0, RoundingMode.DOWN).value().signum()).isPositive();
      }
    }
  }

  private static boolean refused(Amount amount) {
    try {
      Sizes.check("size", amount);
      return false;
    } catch (NotebookException tooMuch) {
      return true;
    }
  }

  @Test
  void moreThanThatIsNoReadingOfAnything() {
    Setting tube = Bench.sheet().setting(Bench.TUBE).orElseThrow();
    Reading far = Reading.of(Amount.of("9000000000", Length.METRE));
    assertThatThrownBy(() -> Bounds.requireFits(tube, far))
        .isInstanceOf(NotebookException.class)
        .hasMessageContaining("9000000000 m");
    assertThatCode(() -> Bounds.requireFits(tube, Reading.of(Bench.mm("-1000000000"))))
        .doesNotThrowAnyException();
    assertThatThrownBy(() -> new Range(Bench.clicks(0), Bench.clicks(2_000_000_000L)))
        .isInstanceOf(NotebookException.class);
  }

  @Test
  void whatGoesBeyondALimitBelowZeroIsHeldOnAStep() {
    Setting marks = turns("-1", "-0.3");
    Sheet sheet = Bench.sheet().withSettings(List.of(marks));
    assertThat(Bounds.hold(sheet, marks, Reading.of(Bench.turns("5"))))
        .isEqualTo(Reading.of(Bench.turns("-0.5")));
    assertThat(Bounds.hold(sheet, marks, Reading.of(Bench.turns("-0.6"))))
        .isEqualTo(Reading.of(Bench.turns("-0.75")));
  }

  @Test
  void stopsWithoutAStepBetweenThemAreRefused() {
    assertThatThrownBy(() -> turns("0.3", "0.4"))
        .isInstanceOf(NotebookException.class)
        .hasMessageContaining("0.25");
    assertThatThrownBy(() -> turns("-0.2", "-0.1")).isInstanceOf(NotebookException.class);
    assertThatCode(() -> turns("0.25", "0.25")).doesNotThrowAnyException();
    assertThatCode(() -> turns("-0.1", "0.1")).doesNotThrowAnyException();
  }

  private static Setting turns(String least, String most) {
    return Bench.measured(
        Bench.HIGH_SPEED,
        "Turns",
        Role.SHOCK_HIGH_SPEED,
        Carrier.SINGLE,
        new Range(Bench.turns(least), Bench.turns(most)),
        "0.25");
  }
}
