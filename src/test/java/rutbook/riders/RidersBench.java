package rutbook.riders;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import rutbook.json.RulesJson;
import rutbook.reasoning.RuleBook;

/** How often each method solves simulated riders: the table of DEVELOPERS.md. */
public final class RidersBench {
  static final int MOTOS = 12;

  /** The methods of the table, in its order. */
  enum Way {
    REASONING(seed -> Method.reasoning()),
    RESTING(seed -> Method.resting()),
    CHART(seed -> Method.chart()),
    RANDOM(Method::random),
    OPTIMISER(seed -> new ProcessOptimiser()),
    KNOWS_THE_TRUTH(seed -> Method.knowsTheTruth());

    private final LongFunction<Method> made;

    Way(LongFunction<Method> made) {
      this.made = made;
    }
  }

  private RidersBench() {}

  /**
   * Prints the table. Options: {@code --riders N} for each kind, over all seeds (200); {@code
   * --seeds 1,2,3,4} (101 to 104); {@code --kinds LINEAR,…} and {@code --ways REASONING,…} (all).
   */
  public static void main(String[] arguments) {
    List<String> given = List.of(arguments);
    long[] seeds =
        Arrays.stream(option(given, "--seeds", "101,102,103,104").split(","))
            .mapToLong(Long::parseLong)
            .toArray();
    int riders = Integer.parseInt(option(given, "--riders", "200"));
    String kinds = option(given, "--kinds", "");
    String ways = option(given, "--ways", "");
    for (SimulatedRider.Kind kind : SimulatedRider.Kind.values()) {
      if (kinds.isEmpty() || List.of(kinds.split(",")).contains(kind.name())) {
        print(kind, riders, seeds, ways);
      }
    }
  }

  private static String option(List<String> given, String name, String usual) {
    int at = given.indexOf(name);
    return at < 0 ? usual : given.get(at + 1);
  }

  private static void print(SimulatedRider.Kind kind, int riders, long[] seeds, String ways) {
    List<Outcome> ours = List.of();
    for (Way way : Way.values()) {
      if (!ways.isEmpty() && !List.of(ways.split(",")).contains(way.name())) {
        continue;
      }
      List<Outcome> outcomes = run(kind, way, riders, seeds);
      System.out.println(line(kind, way, outcomes));
      if (way == Way.REASONING) {
        ours = outcomes;
        System.out.println(calibration(outcomes));
      } else if (!ours.isEmpty()) {
        System.out.println(
            "                 reasoning solves more within 12, points: "
                + PairedShare.of(ours, outcomes, MOTOS));
      }
    }
  }

  private static String line(SimulatedRider.Kind kind, Way way, List<Outcome> outcomes) {
    double all = outcomes.size() / 100.0;
    return String.format(
        Locale.ROOT,
        "%-15s %-15s %d riders: within 8 %.1f %%, within 12 %.1f %%, ever worse %.1f %%,"
            + " left alone %d (right %d), solved and left alone %d of %d",
        kind,
        way,
        outcomes.size(),
        outcomes.stream().filter(each -> each.solvedAt() <= 8).count() / all,
        outcomes.stream().filter(each -> each.solvedAt() <= MOTOS).count() / all,
        outcomes.stream().filter(Outcome::everWorse).count() / all,
        outcomes.stream().mapToInt(Outcome::left).sum(),
        outcomes.stream().mapToInt(Outcome::rightlyLeft).sum(),
        outcomes.stream().filter(Outcome::restsOnceSolved).count(),
        outcomes.stream().filter(each -> each.solvedAt() <= MOTOS).count());
  }

  /** Of proposals said to help with a chance, how many did. */
  static String calibration(List<Outcome> outcomes) {
    StringBuilder text = new StringBuilder("                 said and helped:");
    double[] ends = {0, 0.55, 0.65, 0.75, 0.85, 0.95, 1.0001};
    for (int i = 1; i < ends.length; i++) {
      double from = ends[i - 1];
      double to = ends[i];
      List<Outcome.Said> said =
          outcomes.stream()
              .flatMap(each -> each.said().stream())
              .filter(each -> each.chance() >= from && each.chance() < to)
              .toList();
      double helped = said.stream().filter(Outcome.Said::helped).count();
      text.append(
          String.format(
              Locale.ROOT,
              "  %.0f-%.0f %%: %.1f of %d",
              100 * from,
              Math.min(100, 100 * to),
              said.isEmpty() ? 0 : 100 * helped / said.size(),
              said.size()));
    }
    return text.toString();
  }

  /** Riders of a kind, shared out over the seeds, each with a fresh method. */
  static List<Outcome> run(SimulatedRider.Kind kind, Way way, int riders, long... seeds) {
    RuleBook book = RulesJson.ofTheTrade();
    return IntStream.range(0, riders)
        .parallel()
        .mapToLong(i -> seeds[i % seeds.length] * 100_003 + i / seeds.length)
        .mapToObj(own -> ride(new SimulatedRider(kind, book, own), way.made.apply(own), book))
        .toList();
  }

  private static Outcome ride(SimulatedRider rider, Method method, RuleBook book) {
    boolean worse = false;
    int left = 0;
    int rightly = 0;
    List<Outcome.Said> said = new ArrayList<>();
    rider.ride(List.of());
    for (int moto = 1; moto <= MOTOS; moto++) {
      Optional<Method.Choice> choice = method.next(rider, book);
      if (choice.map(Method.Choice::finer).orElse(true)) {
        left++;
        rightly += rider.nothingToGain() ? 1 : 0;
      }
      double before = rider.discomfort();
      rider.ride(choice.map(Method.Choice::change).stream().toList());
      double after = rider.discomfort();
      choice
          .flatMap(Method.Choice::chance)
          .ifPresent(chance -> said.add(new Outcome.Said(chance, after < before)));
      worse |= after > 1.5 * rider.start();
      if (rider.solved()) {
        boolean rests = method.next(rider, book).map(Method.Choice::finer).orElse(true);
        return new Outcome(moto, worse, left, rightly, rests, said);
      }
    }
    return new Outcome(Integer.MAX_VALUE, worse, left, rightly, false, said);
  }
}
