package rutbook.rebuild;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Hours;
import rutbook.notebook.Moto;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.stats.CommonSlope;

/**
 * Whether the notebook's own feel gets worse with hours since an oil: the symptom that rises most
 * clearly. A line through the mean rating of each session, with a level of its own for every oil,
 * so that ratings of one day are not counted as if they were independent. What was changed on the
 * bike meanwhile is part of it.
 *
 * @param perTenHours rise of the rating (0 to 5) over ten hours
 * @param half half the width of the rise's 95 % interval
 * @param symptoms how many symptoms were looked at, of which this is the clearest
 * @param outsideChance whether the rise is less likely than one in twenty by chance, counted over
 *     all symptoms that were looked at
 */
public record Fade(
    End end,
    Symptom symptom,
    double perTenHours,
    double half,
    int motos,
    int sessions,
    int symptoms,
    boolean outsideChance) {
  /** Below this many sessions of one symptom nothing is said; our own choice. */
  static final int LEAST_SESSIONS = 6;

  /** Hours that the ratings of one oil must span; our own choice. */
  static final double LEAST_HOURS = 5;

  private static final double CHANCE = 0.05;

  /**
   * What a session says of a symptom.
   *
   * @param hours since the oil
   * @param oil which oil, counted from the first
   * @param severity mean of the motos that rated it
   */
  record Ridden(double hours, int oil, double severity, int motos) {}

  /** Of an oil; empty for other services and where too little was rated. */
  static Optional<Fade> of(Timeline timeline, Hours hours, ServiceItem item) {
    boolean oil = item.kind() == ServiceKind.FORK_OIL || item.kind() == ServiceKind.SHOCK_OIL;
    return oil ? clearest(item.end(), ridden(timeline, hours, item)) : Optional.empty();
  }

  private static Map<Symptom, List<Ridden>> ridden(
      Timeline timeline, Hours hours, ServiceItem item) {
    double[] since = hours.sinceAtEach(item);
    Map<Symptom, List<Ridden>> all = new EnumMap<>(Symptom.class);
    int oil = 0;
    for (int i = 0; i < since.length; i++) {
      Entry entry = timeline.entries().get(i);
      if (Hours.settles(entry, item)) {
        oil++;
      }
      if (entry instanceof Entry.Session session && session.head().meter().isPresent()) {
        for (Map.Entry<Symptom, List<Integer>> rated : rated(session, item.end()).entrySet()) {
          double mean =
              rated.getValue().stream().mapToInt(Integer::intValue).average().orElseThrow();
          all.computeIfAbsent(rated.getKey(), each -> new ArrayList<>())
              .add(new Ridden(since[i], oil, mean, rated.getValue().size()));
        }
      }
    }
    return all;
  }

  /** The worst rating of each symptom in each moto of a session that says anything of it. */
  private static Map<Symptom, List<Integer>> rated(Entry.Session session, End end) {
    Map<Symptom, List<Integer>> rated = new EnumMap<>(Symptom.class);
    for (Moto moto : session.motos()) {
      Map<Symptom, Integer> worst = new EnumMap<>(Symptom.class);
      for (Feel feel : moto.report().feel()) {
        if (feel.end() == end) {
          worst.merge(feel.symptom(), feel.severity(), Math::max);
        }
      }
      worst.forEach(
          (symptom, severity) ->
              rated.computeIfAbsent(symptom, each -> new ArrayList<>()).add(severity));
    }
    return rated;
  }

  /** The symptom whose rise is least likely to be chance; empty where none has enough ratings. */
  static Optional<Fade> clearest(End end, Map<Symptom, List<Ridden>> ridden) {
    List<Line> lines = new ArrayList<>();
    ridden.forEach((symptom, all) -> line(symptom, all).ifPresent(lines::add));
    return lines.stream()
        .filter(line -> line.slope() > 0)
        .min(Comparator.comparingDouble(Line::chance))
        .map(line -> line.of(end, lines.size()));
  }

  /** One symptom's line: slope in ratings an hour. */
  private record Line(
      Symptom symptom, double slope, double half, double chance, int motos, int sessions) {
    Fade of(End end, int symptoms) {
      return new Fade(
          end,
          symptom,
          slope * 10,
          half * 10,
          motos,
          sessions,
          symptoms,
          chance * symptoms < CHANCE);
    }
  }

  private static Optional<Line> line(Symptom symptom, List<Ridden> all) {
    Map<Integer, Span> spans = new HashMap<>();
    all.forEach(each -> spans.merge(each.oil(), Span.at(each.hours()), Span::with));
    List<Ridden> kept = all.stream().filter(each -> spans.get(each.oil()).saysSomething()).toList();
    // Every oil that says something has two sessions at least, so that enough are left over.
    if (kept.size() < LEAST_SESSIONS) {
      return Optional.empty();
    }
    CommonSlope fit =
        CommonSlope.fit(
            kept.stream().mapToInt(Ridden::oil).toArray(),
            kept.stream().mapToDouble(Ridden::hours).toArray(),
            kept.stream().mapToDouble(Ridden::severity).toArray());
    return fit.standardError() > 0
        ? Optional.of(
            new Line(
                symptom,
                fit.slope(),
                fit.halfInterval(),
                fit.chance(),
                kept.stream().mapToInt(Ridden::motos).sum(),
                kept.size()))
        : Optional.empty();
  }

  /** How far apart the sessions on one oil lie, in hours since it. */
  private record Span(double least, double most) {
    static Span at(double hours) {
      return new Span(hours, hours);
    }

    Span with(Span other) {
      return new Span(Math.min(least, other.least), Math.max(most, other.most));
    }

    boolean saysSomething() {
      return most - least >= LEAST_HOURS;
    }
  }
}
