package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rutbook.figures.FillRoom;
import rutbook.notebook.Bench;
import rutbook.notebook.Range;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.StepId;
import rutbook.rebuild.Finding;
import rutbook.rebuild.StepKind;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Pressure;

/** What an entry at the bench shows, in a sentence with both numbers in it. */
class FindingWordsTest {
  private static final FindingWords WORDS = new FindingWords(Phrases.english(Display.METRIC));
  private static final StepId STEP = new StepId("step");
  private static final Setting OIL = Bench.sheet().setting(Bench.FORK_OIL).orElseThrow();
  private static final Setting REBOUND = Bench.sheet().setting(Bench.FORK_REBOUND).orElseThrow();
  private static final Optional<Side> LEFT = Optional.of(Side.LEFT);

  private static Amount bar(String number) {
    return Amount.of(number, Pressure.BAR);
  }

  private static final Finding GAS =
      new Finding.OutsideWish(
          STEP, StepKind.SHOP_GAS, bar("12"), new Range(bar("10"), bar("10.5")));
  private static final Finding SAG =
      new Finding.OutsideWish(
          STEP, StepKind.FRONT_RACE_SAG, mm("81"), new Range(mm("65"), mm("80")));
  private static final Finding OFF_SAG =
      new Finding.OffTarget(
          STEP, StepKind.RACE_SAG, Optional.empty(), Optional.empty(), mm("104"), mm("110"));
  private static final Finding OFF_CLICKS =
      new Finding.OffTarget(
          STEP, StepKind.PLACE_CLICKER, Optional.of(REBOUND), LEFT, clicks(11), clicks(9));
  private static final Finding TOTAL =
      new Finding.TotalOff(STEP, REBOUND, LEFT, clicks(20), clicks(17));
  private static final Finding NO_ROOM =
      new Finding.NoRoom(
          STEP,
          OIL,
          new FillRoom(
              Side.LEFT,
              ml("525"),
              ml("19"),
              OptionalDouble.of(27.6),
              ml("-17"),
              true,
              FillRoom.Verdict.REFUSED));

  @Test
  void gasThatTheShopSetIsForTheShop() {
    assertThat(WORDS.finding(GAS))
        .startsWith("The shop set 12 bar (174 psi) of gas, the manual has ")
        .endsWith("Ask the shop before it is ridden.");
  }

  @Test
  void whatWasWantedAndWhatItIsStandSideBySide() {
    assertThat(WORDS.finding(SAG))
        .isEqualTo("Measure race sag of the front: 81 mm, wished for 65 to 80 mm.");
    assertThat(WORDS.finding(OFF_SAG))
        .isEqualTo("Measure race sag: 104 mm was wanted, 110 mm was entered.");
    assertThat(WORDS.finding(OFF_CLICKS))
        .isEqualTo("Fork rebound, left leg: 11 clicks was wanted, 9 clicks was entered.");
    assertThat(WORDS.finding(TOTAL))
        .isEqualTo(
            "Fork rebound, left leg: 17 clicks from stop to stop, the sheet says 20 clicks."
                + " Not seated, cap not home, or other valving?");
  }

  @Test
  void aLegWithoutRoomIsSaidWithTheAirThatIsLeft() {
    assertThat(WORDS.finding(NO_ROOM)).contains("eft").contains("19 mL");
    assertThat(WORDS.finding(new Finding.Incomplete(STEP)))
        .isEqualTo("What was entered does not answer this step: enter it again.");
  }

  @Test
  void everyFindingIsSaidInEveryLanguage() {
    for (Locale locale : List.of(Locale.UK, Locale.GERMANY)) {
      FindingWords words = new FindingWords(new Phrases(locale, Display.US));
      for (Finding finding :
          List.of(
              GAS,
              SAG,
              OFF_SAG,
              OFF_CLICKS,
              TOTAL,
              NO_ROOM,
              new Finding.Skipped(STEP, StepKind.SPIN, "no time"),
              new Finding.CountDiffers(STEP, REBOUND, LEFT, clicks(11), clicks(12)),
              new Finding.OutsideLimits(
                  STEP, OIL, LEFT, ml("390"), new Range(ml("300"), ml("380")), true),
              new Finding.LegsDiffer(STEP, OIL, ml("330"), ml("340"), ml("2")))) {
        assertThat(words.finding(finding)).isNotBlank().doesNotContain("{", "null");
      }
    }
  }
}
