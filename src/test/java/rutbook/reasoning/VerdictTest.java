package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Reading;
import rutbook.notebook.Report;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.notebook.TravelUsed;

class VerdictTest {
  private static final Feel HARSH = Feel.of(End.FRONT, Section.SQUARE_EDGES, Symptom.HARSH, 0);
  private static final List<Complaint> MEANT = List.of(Complaint.of(HARSH));
  private static final Change THERE =
      Change.of(Bench.FORK_COMPRESSION, Reading.bothLegs(Bench.clicks(14)));
  private static final Change BACK =
      Change.of(Bench.FORK_COMPRESSION, Reading.bothLegs(Bench.clicks(12)));

  private static Moto rated(String id, List<Change> changes, int severity) {
    return Bench.moto(id, changes, List.of(HARSH.withSeverity(severity)));
  }

  private static Verdict.Outcome outcome(List<Moto> motos, String changed) {
    return verdict(motos, changed, MEANT).outcome();
  }

  private static Verdict verdict(List<Moto> motos, String changed, List<Complaint> meant) {
    Entry.Session session = Bench.session("s", Bench.SPRING, Bench.HOLLOW, Bench.setup(), motos);
    Timeline timeline = Timeline.of(Bench.notebook().with(session), Bench.BIKE);
    return Verdict.of(
        timeline,
        session,
        motos.stream()
            .filter(each -> each.id().text().equals(changed))
            .findFirst()
            .orElseThrow()
            .id(),
        meant);
  }

  @Test
  void muchBetterIsOnlyBetterUntilTheRiderWentBack() {
    List<Moto> there = List.of(rated("a", List.of(), 4), rated("b", List.of(THERE), 1));
    assertThat(outcome(there, "b")).isEqualTo(Verdict.Outcome.BETTER);
    List<Moto> again = new ArrayList<>(there);
    again.add(rated("c", List.of(BACK), 4));
    assertThat(outcome(again, "b")).isEqualTo(Verdict.Outcome.CONFIRMED);
  }

  @Test
  void whatStaysBetterOnGoingBackWasNotTheChange() {
    List<Moto> motos =
        List.of(
            rated("a", List.of(), 4), rated("b", List.of(THERE), 1), rated("c", List.of(BACK), 1));
    assertThat(outcome(motos, "b")).isEqualTo(Verdict.Outcome.NOT_THE_CHANGE);
  }

  @Test
  void aPointBetterIsInsideTheNoiseAndMuchWorseIsWorse() {
    assertThat(outcome(List.of(rated("a", List.of(), 3), rated("b", List.of(THERE), 2)), "b"))
        .isEqualTo(Verdict.Outcome.NO_DIFFERENCE);
    assertThat(outcome(List.of(rated("a", List.of(), 1), rated("b", List.of(THERE), 4)), "b"))
        .isEqualTo(Verdict.Outcome.WORSE);
    assertThat(outcome(List.of(rated("a", List.of(), 1)), "a"))
        .isEqualTo(Verdict.Outcome.NOT_RIDDEN);
  }

  /** A moto of laps that drift together: correlation 0.4 between neighbours, own mean. */
  private static Moto timed(Random random, String id, List<Change> changes, double tau) {
    return timed(random, id, changes, tau, 120);
  }

  private static Moto timed(
      Random random, String id, List<Change> changes, double tau, double expected) {
    double mean = expected + tau * random.nextGaussian();
    double drift = random.nextGaussian();
    List<Lap> laps = new ArrayList<>();
    for (int lap = 0; lap < 7; lap++) {
      laps.add(Lap.of(Math.round(1000 * (mean + drift))));
      drift = 0.4 * drift + Math.sqrt(1 - 0.16) * random.nextGaussian();
    }
    Report report = new Report(laps, OptionalInt.empty(), List.of(), TravelUsed.NOT_NOTED, false);
    return Bench.moto(id, changes, List.of()).withReport(report);
  }

  @org.junit.jupiter.api.Tag("heavy")
  @Test
  void aChangeThatDoesNothingIsCalledADifferenceInAtMostSevenOfAHundred() {
    for (double tau : new double[] {0.5, 0.65, 0.8}) {
      Random random = new Random(40_417);
      int called = 0;
      int trials = 1500;
      for (int i = 0; i < trials; i++) {
        List<Moto> motos =
            List.of(
                timed(random, "a", List.of(), tau),
                timed(random, "b", List.of(THERE), tau),
                timed(random, "c", List.of(BACK), tau));
        Verdict verdict = verdict(motos, "b", List.of());
        assertThat(verdict.laps()).isPresent();
        called += verdict.outcome() == Verdict.Outcome.NO_DIFFERENCE ? 0 : 1;
      }
      assertThat(100.0 * called / trials).as("per cent at τ = %s", tau).isLessThanOrEqualTo(7);
    }
  }

  @org.junit.jupiter.api.Tag("heavy")
  @Test
  void aChangeThatGainsFiveLapScattersIsCalledBetterAndConfirmedMoreOftenThanNot() {
    Random random = new Random(40_418);
    int confirmed = 0;
    int trials = 300;
    for (int i = 0; i < trials; i++) {
      List<Moto> motos =
          List.of(
              timed(random, "a", List.of(), 0.65),
              timed(random, "b", List.of(THERE), 0.65, 115),
              timed(random, "c", List.of(BACK), 0.65));
      Verdict.Outcome outcome = verdict(motos, "b", List.of()).outcome();
      confirmed += outcome == Verdict.Outcome.CONFIRMED ? 1 : 0;
    }
    assertThat(confirmed).isGreaterThan(trials * 9 / 10);
  }
}
