package rutbook.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.compare.LapComparison.State;
import rutbook.notebook.Bench;
import rutbook.notebook.Entry;
import rutbook.notebook.Lap;
import rutbook.notebook.Reading;
import rutbook.notebook.Timeline;

class LapComparisonTest {
  private final Entry.Session first =
      Rides.session(
          0, Bench.HOLLOW, Bench.setup(), Rides.moto("a", 112.5, 112.5, 111.5, 111.4, 112.0));
  private final Entry.Session second =
      Rides.session(
          7, Bench.HOLLOW, Bench.setup(), Rides.moto("b", 111.0, 110.4, 111.3, 110.2, 110.9));

  private static Choice moto(Entry.Session session, int moto) {
    return new Choice.OfMoto(session, Rides.track(session.track()), moto);
  }

  private static LapComparison compared(Timeline timeline, Choice from, Choice to) {
    return LapComparison.of(timeline, from, to);
  }

  /**
   * One moto of five laps against one, no unchanged pair: difference of means with variance 2 τ² +
   * s₁²/5 + s₂²/5, τ = 0.65 of the pooled lap sd worth nine pairs, Satterthwaite. Computed with
   * numpy 2.4.6 and scipy 1.17.1 (stats.t).
   */
  @Test
  void oneMotoAgainstOneIsHeldAgainstTheUsualNoise() {
    LapComparison laps = compared(Rides.timeline(first, second), moto(first, 0), moto(second, 0));
    LapDifference difference = laps.result().orElseThrow();
    assertThat(laps.by().orElseThrow()).isCloseTo(-1.22, within(1e-9));
    assertThat(difference.standardError()).isCloseTo(0.5466260147486558, within(1e-9));
    assertThat(difference.chance()).isCloseTo(0.04073869178756417, within(1e-7));
    assertThat(difference.high()).isCloseTo(-0.05834490103950962, within(1e-6));
    assertThat(difference.beyondNoise()).isTrue();
    assertThat(laps.pairs()).isZero();
  }

  @Test
  void swappedSidesSwapTheSign() {
    Timeline timeline = Rides.timeline(first, second);
    double there = compared(timeline, moto(first, 0), moto(second, 0)).by().orElseThrow();
    double back = compared(timeline, moto(second, 0), moto(first, 0)).by().orElseThrow();
    assertThat(back).isCloseTo(-there, within(1e-12));
  }

  /** Half the difference is inside the noise; scipy 1.17.1 counts four motos a side for 0.6 s. */
  @Test
  void aSmallDifferenceSaysHowManyMoreMotosWouldTell() {
    Entry.Session closer =
        Rides.session(
            7,
            Bench.HOLLOW,
            Bench.setup(),
            Rides.moto("b", 111.62, 111.02, 111.92, 110.82, 111.52));
    LapComparison laps = compared(Rides.timeline(first, closer), moto(first, 0), moto(closer, 0));
    assertThat(laps.by().orElseThrow()).isCloseTo(-0.6, within(1e-9));
    assertThat(laps.result().orElseThrow().beyondNoise()).isFalse();
    assertThat(laps.moreMotos()).contains(3);
  }

  @Test
  void unchangedPairsAtTheTrackTeachTheNoiseAndChangedOnesDoNot() {
    Entry.Session three =
        Rides.session(
            14,
            Bench.HOLLOW,
            Bench.setup(),
            Rides.moto("c", 112, 113, 112),
            Rides.moto("d", 115, 116, 115),
            Rides.changed(
                Rides.moto("e", 111, 112, 111),
                Bench.FORK_COMPRESSION,
                Reading.bothLegs(Bench.clicks(14))));
    LapComparison laps =
        compared(Rides.timeline(first, second, three), moto(first, 0), moto(second, 0));
    assertThat(laps.pairs()).isEqualTo(1);
    assertThat(laps.result().orElseThrow().beyondNoise())
        .as("motos three seconds apart with nothing changed")
        .isFalse();
  }

  @Test
  void theFirstLapAndDroppedLapsAreLeftOut() {
    Entry.Session dropped =
        first.withMotos(
            List.of(
                first
                    .motos()
                    .get(0)
                    .withReport(
                        first
                            .motos()
                            .get(0)
                            .report()
                            .withLaps(
                                List.of(
                                    Lap.of(150_000),
                                    Lap.of(112_000),
                                    new Lap(190_000, java.util.Optional.of("fell")),
                                    Lap.of(113_000))))));
    assertThat(MotoLaps.of(dropped, 0).seconds()).containsExactly(112.0, 113.0);
  }

  @Test
  void whatCannotBeComparedSaysWhy() {
    Entry.Session dunes = Rides.session(21, Bench.DUNE, Bench.setup(), Rides.moto("f", 90, 91, 90));
    Entry.Session silent = Rides.session(28, Bench.HOLLOW, Bench.setup(), Rides.moto("g"));
    Entry.Session single = Rides.session(35, Bench.HOLLOW, Bench.setup(), Rides.moto("h", 112));
    Timeline timeline = Rides.timeline(first, dunes, silent, single);
    Choice from = moto(first, 0);
    assertThat(compared(timeline, from, moto(dunes, 0)).state()).isEqualTo(State.OTHER_TRACK);
    assertThat(compared(timeline, from, moto(silent, 0)).state()).isEqualTo(State.NO_LAPS);
    assertThat(compared(timeline, from, new Choice.Now()).state()).isEqualTo(State.NO_LAPS);
    assertThat(compared(timeline, from, from).state()).isEqualTo(State.SAME_MOTO);
    assertThat(compared(timeline, from, moto(single, 0)).state()).isEqualTo(State.TOO_FEW);
    assertThat(compared(timeline, from, moto(single, 0)).result()).isEmpty();
  }
}
