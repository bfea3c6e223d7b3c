package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.mm;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import rutbook.units.Amount;
import rutbook.units.Length;

class RangeTest {
  /** One to two inches, written in the other system. */
  private static final Range INCHES = new Range(mm("25.4"), mm("50.8"));

  private static Amount inches(String number) {
    return Amount.of(number, Length.INCH);
  }

  @Test
  void bothEndsAreAllowedInAnyUnitAndStayAsWritten() {
    for (String number : new String[] {"1", "1.5", "2"}) {
      assertThat(INCHES.contains(inches(number))).isTrue();
      assertThat(INCHES.hold(inches(number))).isEqualTo(inches(number));
    }
    assertThat(INCHES.contains(inches("0.999"))).isFalse();
    assertThat(INCHES.contains(inches("2.001"))).isFalse();
    assertThat(INCHES.hold(inches("0.999"))).isEqualTo(mm("25.4"));
    assertThat(INCHES.hold(inches("2.001"))).isEqualTo(mm("50.8"));
  }

  /** What both allow is exactly what each of them allows. */
  @Property(tries = 300)
  void whatBothAllowIsWhatEachAllows(
      @ForAll @IntRange(min = 0, max = 6) int least,
      @ForAll @IntRange(min = 0, max = 6) int width,
      @ForAll @IntRange(min = 0, max = 6) int otherLeast,
      @ForAll @IntRange(min = 0, max = 6) int otherWidth) {
    Range one = range(least, least + width);
    Range other = range(otherLeast, otherLeast + otherWidth);
    Optional<Range> both = one.within(other);
    for (int number = 0; number <= 12; number++) {
      Amount amount = mm(Integer.toString(number));
      assertThat(both.isPresent() && both.get().contains(amount))
          .isEqualTo(one.contains(amount) && other.contains(amount));
      assertThat(one.contains(one.hold(amount))).isTrue();
    }
  }

  private static Range range(int least, int most) {
    return new Range(mm(Integer.toString(least)), mm(Integer.toString(most)));
  }
}
