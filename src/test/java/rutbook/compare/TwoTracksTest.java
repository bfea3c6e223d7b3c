package rutbook.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.compare.TrackDifference.Verdict;
import rutbook.notebook.Bench;
import rutbook.notebook.Entry;
import rutbook.notebook.SettingId;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.units.Amount;
import rutbook.units.ClickUnit;

class TwoTracksTest {

  private static TwoTracks tracks(Timeline timeline) {
    return TwoTracks.of(timeline, Rides.track(Bench.HOLLOW), Rides.track(Bench.DUNE));
  }

  private static TrackDifference row(TwoTracks tracks, SettingId id) {
    return tracks.settings().stream()
        .filter(each -> each.setting().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** Sessions of so many clicks each, hollow and dune in turn, so that nothing drifts. */
  private static Timeline ridden(int[] hollow, int[] dune) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < Math.max(hollow.length, dune.length); i++) {
      if (i < hollow.length) {
        entries.add(
            Rides.session(2 * i, Bench.HOLLOW, Rides.compression(hollow[i]), Rides.moto("h" + i)));
      }
      if (i < dune.length) {
        entries.add(
            Rides.session(2 * i + 1, Bench.DUNE, Rides.compression(dune[i]), Rides.moto("d" + i)));
      }
    }
    return Rides.timeline(entries.toArray(Entry[]::new));
  }

  @Test
  void aCleanSplitOverEnoughSessionsIsConsistent() {
    TwoTracks tracks = tracks(ridden(new int[] {14, 15, 14, 16}, new int[] {10, 11, 10, 12}));
    TrackDifference row = row(tracks, Bench.FORK_COMPRESSION);
    assertThat(row.verdict()).isEqualTo(Verdict.CONSISTENT);
    assertThat(row.beyond()).as("all of the second are below 14.5").isEqualTo(4);
    assertThat(row.chance()).as("2 of 70 splits").isCloseTo(2 / 70.0, within(1e-12));
    assertThat(row.first().orElseThrow())
        .isEqualTo(
            new Spread(4, Bench.clicks(14), Amount.of("14.5", ClickUnit.CLICK), Bench.clicks(16)));
    assertThat(row.second().orElseThrow().median()).isEqualTo(Amount.of("10.5", ClickUnit.CLICK));
    assertThat(row(tracks, Bench.FORK_REBOUND).verdict()).isEqualTo(Verdict.SAME);
  }

  @Test
  void anOverlapMayBeChanceAndFewSessionsProveNothing() {
    assertThat(
            row(
                    tracks(ridden(new int[] {14, 11, 14, 12}, new int[] {12, 13, 14, 11})),
                    Bench.FORK_COMPRESSION)
                .verdict())
        .isEqualTo(Verdict.CHANCE);
    assertThat(
            row(
                    tracks(ridden(new int[] {14, 15, 14}, new int[] {10, 11, 10})),
                    Bench.FORK_COMPRESSION)
                .verdict())
        .isEqualTo(Verdict.TOO_FEW);
  }

  @Test
  void aTrackThatWasNeverRiddenSaysNothing() {
    TwoTracks tracks = tracks(ridden(new int[] {14}, new int[] {}));
    assertThat(tracks.second().best()).isEmpty();
    assertThat(tracks.second().motos()).isZero();
    assertThat(tracks.settings()).allMatch(row -> row.verdict() == Verdict.TOO_FEW);
    assertThat(tracks(Rides.timeline()).first().sessions()).isEmpty();
  }

  /**
   * Nine sessions, five and four, with hours and place in the day: the coefficient of the track and
   * its 95 % interval by numpy 2.4.6 linalg.lstsq and scipy 1.17.1 stats.t.
   */
  @Test
  void whatIsLeftWithoutDriftIsLeastSquares() {
    double[] clicks = {15, 15, 14, 15, 12, 12, 11, 11, 14};
    double[] hours = {2, 9, 15, 3, 6, 5, 12, 1, 14};
    int[] order = {1, 2, 0, 2, 1, 1, 2, 0, 2};
    Settled.Points points = new Settled.Points(clicks, hours, order, 9, 5);
    WithoutDrift without = WithoutDrift.of(ClickUnit.CLICK, points).orElseThrow();
    assertThat(without.by().value().doubleValue()).isCloseTo(-2.2573, within(1e-4));
    assertThat(without.low().value().doubleValue()).isCloseTo(-4.7170, within(1e-4));
    assertThat(without.high().value().doubleValue()).isCloseTo(0.2023, within(1e-4));
    assertThat(without.beyondNoise()).isFalse();
    assertThat(without.taken())
        .containsExactlyInAnyOrder(WithoutDrift.Drift.HOURS, WithoutDrift.Drift.ROUGHENING);
  }

  @Test
  void aDifferenceThatIsAllDriftIsNotCalledConsistent() {
    double[] clicks = new double[10];
    double[] hours = new double[10];
    double[] wobble = {0.3, -0.2, 0.1, -0.3, 0.2, -0.1, 0.3, -0.3, 0.1, -0.1};
    for (int i = 0; i < 10; i++) {
      clicks[i] = 10 + 0.5 * i + wobble[i];
      hours[i] = i;
    }
    Settled.Points points = new Settled.Points(clicks, hours, new int[10], 10, 5);
    WithoutDrift without = WithoutDrift.of(ClickUnit.CLICK, points).orElseThrow();
    assertThat(without.beyondNoise()).isFalse();
  }

  @Test
  void theSamplesTwoTracksDifferInTheForksHeightAndCompression() {
    Timeline timeline = Timeline.of(Samples.season(), Samples.season().bikes().get(0).id());
    TwoTracks tracks =
        TwoTracks.of(
            timeline,
            Samples.season().shelf().tracks().get(0),
            Samples.season().shelf().tracks().get(1));
    assertThat(tracks.settings(Verdict.CONSISTENT).stream().map(row -> row.setting().name()))
        .containsExactlyInAnyOrder("Tube above clamp", "Fork compression");
  }
}
