package rutbook.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rutbook.compare.TrackDifference.Verdict;
import rutbook.notebook.Setting;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.stats.RankSplit;

/**
 * Two tracks over all their sessions: the setup that worked best at each, and for each setting of
 * the newest sheet what consistently differs and what may be chance.
 */
public record TwoTracks(TrackSide first, TrackSide second, List<TrackDifference> settings) {
  private static final double BY_CHANCE = 0.05;

  public TwoTracks {
    settings = List.copyOf(settings);
  }

  public static TwoTracks of(Timeline timeline, Track first, Track second) {
    TrackSide one = TrackSide.of(timeline, first);
    TrackSide other = TrackSide.of(timeline, second);
    List<Setting> sheet = timeline.bike().latestSheet().settings();
    Settled settled = new Settled(one, other, sheet, new WithoutDrift.OilAge(timeline));
    List<TrackDifference> settings = new ArrayList<>();
    for (int i = 0; i < sheet.size(); i++) {
      settings.add(difference(sheet.get(i), settled.of(i)));
    }
    return new TwoTracks(one, other, settings);
  }

  private static TrackDifference difference(Setting setting, Settled.Points points) {
    double[] one = points.ofFirst();
    double[] other = points.ofSecond();
    Optional<Spread> first = spread(setting, one);
    Optional<Spread> second = spread(setting, other);
    if (first.isEmpty() || second.isEmpty()) {
      return new TrackDifference(setting, first, second, Verdict.TOO_FEW, 0, 1, Optional.empty());
    }
    if (!points.valueVaries()) {
      return new TrackDifference(setting, first, second, Verdict.SAME, 0, 1, Optional.empty());
    }
    double chance = RankSplit.of(one, other).chance();
    Optional<WithoutDrift> without = WithoutDrift.of(setting.scale().step().unit(), points);
    return new TrackDifference(
        setting,
        first,
        second,
        verdict(one, other, chance, without),
        beyond(first.get(), second.get(), other),
        chance,
        without);
  }

  private static int beyond(Spread first, Spread second, double[] other) {
    double from = first.median().value().doubleValue();
    double way = Math.signum(second.median().value().doubleValue() - from);
    return (int) Arrays.stream(other).filter(each -> (each - from) * way > 0).count();
  }

  private static Verdict verdict(
      double[] one, double[] other, double chance, Optional<WithoutDrift> without) {
    if (chance < BY_CHANCE) {
      boolean left = without.map(WithoutDrift::beyondNoise).orElse(true);
      return left ? Verdict.CONSISTENT : Verdict.DRIFT;
    }
    return cleanSplit(one.length, other.length) < BY_CHANCE ? Verdict.CHANCE : Verdict.TOO_FEW;
  }

  /** The chance of the cleanest split that so many sessions can show. */
  private static double cleanSplit(int one, int other) {
    double ways = 1;
    for (int i = 1; i <= Math.min(one, other); i++) {
      ways = ways * (Math.max(one, other) + i) / i;
    }
    return 2 / ways;
  }

  private static Optional<Spread> spread(Setting setting, double[] values) {
    return values.length == 0 ? Optional.empty() : Optional.of(Spread.of(setting, values));
  }

  /** The settings of a verdict, in the order of the sheet. */
  public List<TrackDifference> settings(Verdict verdict) {
    return settings.stream().filter(each -> each.verdict() == verdict).toList();
  }
}
