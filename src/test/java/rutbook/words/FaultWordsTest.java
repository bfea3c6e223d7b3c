package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Bounds;
import rutbook.notebook.End;
import rutbook.notebook.Fault;
import rutbook.notebook.Feel;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Reading;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.ClickUnit;
import rutbook.units.Display;

class FaultWordsTest {
  private final FaultWords faults = new FaultWords(Phrases.english(Display.METRIC));

  private static NotebookException thrown(Runnable wrong) {
    return catchThrowableOfType(NotebookException.class, wrong::run);
  }

  private static NotebookException chosen(rutbook.notebook.Setting setting, Reading reading) {
    return thrown(() -> Bounds.requireChoosable(Bench.sheet(), setting, reading));
  }

  @Test
  void aLimitIsSaidWithTheNumberThatWasTyped() {
    assertThat(faults.what(chosen(Words.OIL, Reading.bothLegs(Bench.ml("390")))))
        .isEqualTo(
            "Outer chamber oil cannot be 390 mL (13.19 fl oz): the most is 380 mL (12.84 fl oz).");
    assertThat(faults.what(chosen(Words.OIL, Reading.bothLegs(Bench.floz("9.5")))))
        .isEqualTo(
            "Outer chamber oil cannot be 281 mL (9.5 fl oz): the least is 300 mL (10.15 fl oz).");
    assertThat(faults.what(chosen(Words.HIGH_SPEED, Reading.of(Bench.turns("1.1")))))
        .isEqualTo(
            "Shock high-speed compression cannot be 1.1 turns: it moves in steps of ¼ turn.");
  }

  @Test
  void aReadingThatDoesNotFitSaysWhatIsExpected() {
    assertThat(faults.what(chosen(Words.OIL, Reading.of(Bench.ml("330")))))
        .isEqualTo("Outer chamber oil needs a reading for each leg, left and right.");
    assertThat(faults.what(chosen(Words.TUBE, Reading.bothLegs(Bench.mm("3")))))
        .isEqualTo("Tube above clamp needs one reading, not one for each leg.");
    assertThat(faults.what(chosen(Words.TUBE, Reading.of(Bench.ml("3")))))
        .isEqualTo("Tube above clamp cannot be in mL: expected mm.");
  }

  @Test
  void thePlaceComesFirstWhenItIsKnown() {
    NotebookException thrown =
        thrown(() -> Feel.of(End.FRONT, Section.SAND, Symptom.HARSH, 6)).in("motos/m1");

    assertThat(faults.sentence(thrown))
        .isEqualTo("motos/m1: Severity cannot be 6: it goes from 0 to 5.");
  }

  @Test
  void amountsThatCannotBeAreSentences() {
    AmountException thrown =
        catchThrowableOfType(AmountException.class, () -> Amount.of("1E+2000000", ClickUnit.CLICK));

    assertThat(faults.sentence(thrown))
        .isEqualTo("“1E+2000000” is too large or too small for anything on a bike.");
  }

  @Test
  void noFaultLeavesAHoleInItsSentence() {
    for (Fault fault : Fault.values()) {
      Object[] facts = new Object[4];
      Arrays.fill(facts, "thing");
      NotebookException thrown = new NotebookException(fault, facts);
      assertThat(faults.what(thrown)).doesNotContain("{").endsWith(".");
    }
  }

  @Property(tries = 200, seed = "7")
  void noTypedTextCanTurnOrHideTheLine(@ForAll String name) {
    String safe = SafeText.line(name);

    assertThat(safe.codePoints().filter(SafeTextCheck::turnsOrHides).count()).isZero();
  }

  @Test
  void directionAndControlCharactersAreShownByTheirNumber() {
    assertThat(SafeText.line("Hol\u202Elow\u0007")).isEqualTo("Hol<U+202E>low<U+0007>");
    assertThat(SafeText.line("two\nlines")).isEqualTo("two lines");
    assertThat(SafeText.lines("two\r\nlines\u2066")).isEqualTo("two\nlines<U+2066>");
    assertThat(SafeText.line("Ré‍é 🏍️")).isEqualTo("Ré‍é 🏍️");
  }

  /**
   * Written apart from the code under test: the bidi controls of Unicode and the C0/C1 controls.
   */
  static final class SafeTextCheck {
    private SafeTextCheck() {}

    static boolean turnsOrHides(int point) {
      return point < 0x20
          || point >= 0x7F && point < 0xA0
          || point == 0x061C
          || point == 0x200B
          || point == 0x200E
          || point == 0x200F
          || point >= 0x2028 && point <= 0x202E
          || point >= 0x2066 && point <= 0x2069
          || point == 0xFEFF
          || point >= 0xD800 && point <= 0xDFFF;
    }
  }
}
