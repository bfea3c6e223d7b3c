package rutbook.compare;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;

/**
 * A comparison with all that bears on it: what sag and conditions explain, laps, the fork's curves,
 * and, for two tracks, all their sessions.
 */
public record FullComparison(
    Comparison sides,
    List<Explanation> explained,
    LapComparison laps,
    CurvePair curves,
    Optional<TwoTracks> tracks) {

  public FullComparison {
    explained = List.copyOf(explained);
  }

  /**
   * Both sides and what bears on them.
   *
   * @param shelf has the oils
   */
  public static FullComparison of(Shelf shelf, Timeline timeline, Subject from, Subject to) {
    Comparison sides = Comparison.of(from, to);
    return new FullComparison(
        sides,
        Explaining.of(shelf, timeline, sides),
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
