package rutbook.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.compare.TrackDifference.Verdict;
import rutbook.notebook.Change;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
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
    WithoutDrift.OilAge ages = new WithoutDrift.OilAge(timeline);
    List<Settled> settled = new ArrayList<>();
    one.settled().forEach(best -> settled.add(Settled.of(best, false)));
    other.settled().forEach(best -> settled.add(Settled.of(best, true)));
    List<TrackDifference> settings = new ArrayList<>();
    for (Setting setting : timeline.bike().latestSheet().settings()) {
      settings.add(difference(setting, points(setting, settled, ages)));
    }
    return new TwoTracks(one, other, settings);
  }

  /** What a session came to, folded once for all settings. */
  private record Settled(BestMoto moto, boolean second, Map<SettingId, Reading> readings) {
    static Settled of(BestMoto best, boolean second) {
      Map<SettingId, Reading> readings = new HashMap<>();
      for (Placed placed : best.session().start().placed()) {
        readings.put(placed.setting(), placed.reading());
      }
      for (int i = 0; i <= best.moto(); i++) {
        for (Change change : best.session().motos().get(i).changes()) {
          readings.put(change.setting(), change.to());
        }
      }
      return new Settled(best, second, readings);
    }
  }

  private static List<WithoutDrift.Point> points(
      Setting setting, List<Settled> settled, WithoutDrift.OilAge ages) {
    List<WithoutDrift.Point> points = new ArrayList<>();
    for (Settled each : settled) {
      Reading reading = each.readings().get(setting.id());
      double value = reading == null ? Double.NaN : Spread.value(setting, reading);
      if (!Double.isNaN(value)) {
        double hours = ages.hours(setting, each.moto().session());
        points.add(new WithoutDrift.Point(value, each.second(), hours, each.moto().moto()));
      }
    }
    return points;
  }

  private static TrackDifference difference(Setting setting, List<WithoutDrift.Point> points) {
    double[] one = values(points, false);
    double[] other = values(points, true);
    Optional<Spread> first = spread(setting, one);
    Optional<Spread> second = spread(setting, other);
    if (first.isEmpty() || second.isEmpty()) {
      return new TrackDifference(setting, first, second, Verdict.TOO_FEW, 1, Optional.empty());
    }
    if (points.stream().mapToDouble(WithoutDrift.Point::value).distinct().count() == 1) {
      return new TrackDifference(setting, first, second, Verdict.SAME, 1, Optional.empty());
    }
    double chance = RankSplit.of(one, other).chance();
    Optional<WithoutDrift> without = WithoutDrift.of(setting.scale().step().unit(), points);
    return new TrackDifference(
        setting, first, second, verdict(one, other, chance, without), chance, without);
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

  private static double[] values(List<WithoutDrift.Point> points, boolean second) {
    return points.stream()
        .filter(point -> point.second() == second)
        .mapToDouble(WithoutDrift.Point::value)
        .toArray();
  }

  /** The settings of a verdict, in the order of the sheet. */
  public List<TrackDifference> settings(Verdict verdict) {
    return settings.stream().filter(each -> each.verdict() == verdict).toList();
  }
}
