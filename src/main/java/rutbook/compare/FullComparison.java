package rutbook.compare;

import java.util.Optional;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;

/**
 * A comparison with all that bears on it: laps, the fork's curves, and, for two tracks, all their
 * sessions.
 */
public record FullComparison(
    Comparison sides, LapComparison laps, CurvePair curves, Optional<TwoTracks> tracks) {

  public static FullComparison of(Timeline timeline, Subject from, Subject to) {
    return new FullComparison(
        Comparison.of(from, to),
        LapComparison.of(timeline, from.choice(), to.choice()),
        CurvePair.of(from, to),
        tracks(timeline, from.choice(), to.choice()));
  }

  private static Optional<TwoTracks> tracks(Timeline timeline, Choice from, Choice to) {
    if (from instanceof Choice.BestOf one && to instanceof Choice.BestOf other) {
      Track first = one.track();
      Track second = other.track();
      return first.id().equals(second.id())
          ? Optional.empty()
          : Optional.of(TwoTracks.of(timeline, first, second));
    }
    return Optional.empty();
  }
}
