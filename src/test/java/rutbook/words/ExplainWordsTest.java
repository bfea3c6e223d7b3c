package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.mm;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rutbook.compare.Explanation;
import rutbook.notebook.End;
import rutbook.notebook.Ground;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.units.Amount;
import rutbook.units.Angle;
import rutbook.units.Display;
import rutbook.units.Length;
import rutbook.units.Temperature;

/** What is warmer, higher, lower or rougher is said the right way round. */
class ExplainWordsTest {
  private static final ExplainWords WORDS = new ExplainWords(Phrases.english(Display.METRIC));
  private static final Oil THIN = oil("Thin");
  private static final Oil THICK = oil("Thick");

  private static Oil oil(String name) {
    return new Oil(new OilId(name), name, Optional.empty(), Optional.empty());
  }

  private static Amount celsius(String number) {
    return Amount.of(number, Temperature.CELSIUS);
  }

  private static Explanation oil(String air, Oil after, double share) {
    return new Explanation.OilInAir(celsius(air), THIN, after, share, celsius("50"));
  }

  private static Explanation steers(String front, String rear, String rake, String trail) {
    return new Explanation.Steers(mm(front), mm(rear), Amount.of(rake, Angle.DEGREE), mm(trail));
  }

  private static Explanation air(String higher, double share) {
    return new Explanation.AirBled(Amount.of(higher, Length.METRE), share);
  }

  @Test
  void colderAirThickensTheOilAndWarmerThinsIt() {
    assertThat(WORDS.sentence(oil("-12", THIN, 0.31)))
        .startsWith("Air 12 °C cooler: the fork oil is about 31 % thicker, so slower and firmer");
    assertThat(WORDS.sentence(oil("8", THIN, -0.2)))
        .startsWith("Air 8 °C warmer: the fork oil is about 20 % thinner, so faster and softer");
    assertThat(WORDS.sentence(oil("-12", THICK, 0.5)))
        .startsWith("Air 12 °C cooler, and Thick in the fork instead of Thin: about 50 % thicker");
    assertThat(WORDS.sentence(oil("8", THICK, -0.1))).contains("about 10 % thinner");
  }

  @Test
  void theFrameSteersAsItsEndsStand() {
    assertThat(WORDS.sentence(steers("-5", "0", "0.2", "1")))
        .startsWith("Front 5 mm higher: rake about 0.2° slacker, trail 1 mm more");
    assertThat(WORDS.sentence(steers("5", "-3", "-0.3", "-2")))
        .startsWith("Front 5 mm lower, rear 3 mm higher: rake about 0.3° steeper, trail 2 mm less");
    assertThat(WORDS.sentence(steers("0", "4", "0.1", "0")))
        .startsWith("Rear 4 mm lower: rake about 0.1° slacker, trail the same");
  }

  @Test
  void anEndRidesLowerWithMoreSag() {
    assertThat(WORDS.sentence(new Explanation.RidesAt(End.REAR, mm("6"), true)))
        .isEqualTo("Rear race sag 6 mm more: the rear rides that much lower with you aboard.");
    assertThat(WORDS.sentence(new Explanation.RidesAt(End.REAR, mm("-6"), true)))
        .contains("6 mm less")
        .contains("higher");
    assertThat(WORDS.sentence(new Explanation.RidesAt(End.FRONT, mm("-1"), false)))
        .contains("1 mm apart: a tape may be out by as much");
    assertThat(WORDS.sentence(new Explanation.NotBySetting(mm("4"))))
        .contains("4 mm more of rear race sag");
    assertThat(WORDS.sentence(new Explanation.NotBySetting(mm("-4"))))
        .contains("4 mm less of rear race sag");
  }

  @Test
  void airThatWasBledHigherUpPushesLess() {
    assertThat(WORDS.sentence(air("800", -0.05)))
        .startsWith("Track 800 m higher: air in the fork bled there pushes about 5 % less");
    assertThat(WORDS.sentence(air("-800", 0.05)))
        .startsWith("Track 800 m lower: air in the fork bled there pushes about 5 % more");
  }

  @Test
  void otherGroundIsSaidWithHowRoughItWas() {
    assertThat(
            WORDS.sentence(
                new Explanation.OtherGround(Ground.LOAM, Ground.SAND, OptionalInt.of(2))))
        .startsWith("Other ground, loam and sand, rougher by 2 of 5:");
    for (OptionalInt unsaid : List.of(OptionalInt.empty(), OptionalInt.of(0))) {
      assertThat(WORDS.sentence(new Explanation.OtherGround(Ground.LOAM, Ground.SAND, unsaid)))
          .startsWith("Other ground, loam and sand: what was felt");
    }
    assertThat(WORDS.sentence(new Explanation.Rougher(-1))).startsWith("Smoother by 1 of 5:");
    assertThat(WORDS.sentence(new Explanation.Rougher(3))).startsWith("Rougher by 3 of 5:");
  }

  /** What figures stand on is said once, last, and only where there are any. */
  @Test
  void whatIsReckonedSaysWhatItStandsOn() {
    Explanation plain = new Explanation.Rougher(1);
    assertThat(WORDS.sentences(List.of())).isEmpty();
    assertThat(WORDS.sentences(List.of(plain))).hasSize(1);
    for (Explanation figure :
        List.of(oil("8", THIN, -0.2), steers("5", "0", "-0.3", "-2"), air("800", -0.05))) {
      assertThat(WORDS.sentences(List.of(figure, plain)))
          .hasSize(3)
          .last()
          .asString()
          .startsWith("Reckoned from the bike");
      assertThat(
              new ExplainWords(new Phrases(Locale.GERMANY, Display.US))
                  .sentences(List.of(figure, plain)))
          .hasSize(3)
          .noneMatch(each -> each.contains("{"));
    }
  }
}
