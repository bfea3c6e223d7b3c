package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Section;
import rutbook.notebook.StepDone;
import rutbook.notebook.Symptom;

/** Which cause a finding of the job points to; likelihood is common practice, no source. */
class SuspectsTest {
  private static Feel harsh(End end, int severity) {
    return Feel.of(end, Section.BRAKING_BUMPS, Symptom.HARSH, severity);
  }

  private static Moto moto(String id, Feel... feel) {
    return Bench.moto(id, List.of(), List.of(feel));
  }

  private static ConfirmMoto worse(Plan plan, End end) {
    return ConfirmMoto.judge(
        List.of(moto("a", harsh(end, 1))),
        List.of(moto("c", harsh(end, 4)), moto("d", harsh(end, 4))),
        plan);
  }

  /** The causes that the entries of a job point to, in their order. */
  private static List<Cause> pointedTo(PlanFrom from, StepDone... done) {
    return worse(Jobs.plan(from, done), End.FRONT).suspects().stream()
        .filter(each -> !each.because().isEmpty())
        .map(Suspect::cause)
        .toList();
  }

  private static List<Cause> skipped(PlanFrom from, String... steps) {
    return pointedTo(
        from,
        Arrays.stream(steps).map(step -> Jobs.skipped(step, "no time")).toArray(StepDone[]::new));
  }

  @Test
  void whatWasLeftOutPointsToWhatItWouldHaveShown() {
    PlanFrom fork = Jobs.from(Scope.FORK, Renewed.OIL);
    assertThat(skipped(fork, "pump-cartridge:left")).containsExactly(Cause.AIR_IN_CARTRIDGE);
    assertThat(skipped(fork, "rod-returns:left")).containsExactly(Cause.AIR_IN_CARTRIDGE);
    assertThat(skipped(fork, "fill:fork-oil:left")).containsExactly(Cause.FILL);
    assertThat(skipped(fork, "cartridge-fill:cartridge-oil:right")).containsExactly(Cause.FILL);
    assertThat(skipped(fork, "total:fork-rebound:left"))
        .containsExactly(Cause.COUNT_FROM_WRONG_END);
    assertThat(skipped(fork, "place:fork-rebound")).containsExactly(Cause.COUNT_FROM_WRONG_END);
    for (String axle : List.of("spin", "compress:left", "pinch-last:left")) {
      assertThat(skipped(fork, axle)).as(axle).containsExactly(Cause.PINCHED_AXLE);
    }
    for (String sag : List.of("race-sag", "free-sag", "front-race-sag")) {
      assertThat(skipped(fork, sag)).as(sag).containsExactly(Cause.SAG);
    }
    assertThat(skipped(fork, "place:tyre-front")).containsExactly(Cause.TYRE_PRESSURE);
    assertThat(skipped(fork, "stand")).isEmpty();
  }

  @Test
  void whatWasEnteredPointsToWhatItShows() {
    PlanFrom fork = Jobs.from(Scope.FORK, Renewed.OIL);
    assertThat(pointedTo(fork, Jobs.measured("place:fork-oil", Reading.of(ml("330"), ml("340")))))
        .as("legs apart, and both off the baseline")
        .containsExactly(Cause.LEG_MISMATCH, Cause.FILL);
    assertThat(pointedTo(fork, Jobs.measured("front-race-sag", Reading.of(mm("90")))))
        .as("outside the window")
        .containsExactly(Cause.SAG);
    assertThat(pointedTo(fork, Jobs.measured("race-sag", Reading.of(mm("110")))))
        .as("off the baseline's sag")
        .containsExactly(Cause.SAG);
    assertThat(pointedTo(fork, Jobs.counted("count:fork-rebound", Reading.bothLegs(clicks(30)))))
        .as("found beyond its stop")
        .containsExactly(Cause.COUNT_FROM_WRONG_END);
    assertThat(pointedTo(fork, Jobs.counted("place:fork-rebound", Reading.bothLegs(clicks(9)))))
        .as("a clicker off its target")
        .containsExactly(Cause.COUNT_FROM_WRONG_END);
    assertThat(pointedTo(fork, Jobs.measured("place:tyre-front", Reading.of(Jobs.bar("1.1")))))
        .as("a tyre off its target")
        .containsExactly(Cause.TYRE_PRESSURE);
    assertThat(pointedTo(fork, Jobs.measured("place:tube-above-clamp", Reading.of(mm("9")))))
        .as("a height explains none of them")
        .isEmpty();
  }

  @Test
  void onlyTheEndThatGotWorseIsSuspected() {
    Plan both = Jobs.plan(Scope.BOTH);
    ConfirmMoto judged =
        ConfirmMoto.judge(
            List.of(moto("a", harsh(End.REAR, 0), harsh(End.FRONT, 2))),
            List.of(
                moto("c", harsh(End.REAR, 4), harsh(End.FRONT, 2)),
                moto("d", harsh(End.REAR, 4), harsh(End.FRONT, 2))),
            both);
    assertThat(judged.suspects())
        .extracting(Suspect::cause)
        .containsExactly(Cause.COUNT_FROM_WRONG_END, Cause.SAG, Cause.TYRE_PRESSURE);
    assertThat(judged.symptoms())
        .as("the worst rise first")
        .extracting(SymptomRise::rise)
        .containsExactly(4.0, 0.0);
    assertThat(worse(both, End.WHOLE_BIKE).suspects())
        .as("of the whole bike it may be anything")
        .extracting(Suspect::cause)
        .containsExactly(Cause.values());
  }

  @Test
  void theWorstRiseDecidesWhereverItWasRated() {
    ConfirmMoto judged =
        ConfirmMoto.judge(
            List.of(moto("a", harsh(End.FRONT, 3), harsh(End.REAR, 1), harsh(End.WHOLE_BIKE, 4))),
            List.of(moto("c", harsh(End.FRONT, 1), harsh(End.REAR, 3), harsh(End.WHOLE_BIKE, 2))),
            Jobs.plan(Scope.BOTH));
    assertThat(judged.verdict()).isEqualTo(ConfirmMoto.Verdict.REPEAT);
    assertThat(judged.symptoms().get(0).symptom().end()).isEqualTo(End.REAR);
  }
}
