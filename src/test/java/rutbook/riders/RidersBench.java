package rutbook.riders;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongFunction;
import rutbook.json.RulesJson;
import rutbook.reasoning.RuleBook;

/** How often each method solves simulated riders: the table of DEVELOPERS.md. */
public final class RidersBench {
  static final int MOTOS = 12;

  /** What came of some riders; said and helped count proposals said to help with 75 to 85 %. */
  record Result(int riders, int within8, int within12, int everWorse, int said, int helped) {
    double share(int count) {
      return riders == 0 ? 0 : 100.0 * count / riders;
    }
  }

  private RidersBench() {}

  /** Prints the table: {@code RidersBench [riders per seed] [seed …]}; 50 and 101 to 104. */
  public static void main(String[] arguments) {
    int riders = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 50;
    long[] seeds = {101, 102, 103, 104};
    if (arguments.length > 1) {
      seeds = new long[arguments.length - 1];
      for (int i = 1; i < arguments.length; i++) {
        seeds[i - 1] = Long.parseLong(arguments[i]);
      }
    }
    for (SimulatedRider.Kind kind : SimulatedRider.Kind.values()) {
      print(kind, "reasoning", run(kind, seed -> Method.reasoning(), riders, seeds));
      print(kind, "chart", run(kind, seed -> Method.chart(), riders, seeds));
      print(kind, "random", run(kind, Method::random, riders, seeds));
    }
  }

  private static void print(SimulatedRider.Kind kind, String method, Result result) {
    System.out.printf(
        Locale.ROOT,
        "%-15s %-10s riders %d, within 8 %.1f %%, within 12 %.1f %%, ever worse %.1f %%,"
            + " said 75-85 %%: %d, helped %d%n",
        kind,
        method,
        result.riders(),
        result.share(result.within8()),
        result.share(result.within12()),
        result.share(result.everWorse()),
        result.said(),
        result.helped());
  }

  static Result run(
      SimulatedRider.Kind kind, LongFunction<Method> method, int riders, long... seeds) {
    RuleBook book = RulesJson.ofTheTrade();
    int[] counts = new int[5];
    for (long seed : seeds) {
      for (int i = 0; i < riders; i++) {
        long own = seed * 100_003 + i;
        ride(new SimulatedRider(kind, book, own), method.apply(own), book, counts);
      }
    }
    return new Result(riders * seeds.length, counts[0], counts[1], counts[2], counts[3], counts[4]);
  }

  private static void ride(SimulatedRider rider, Method method, RuleBook book, int[] counts) {
    boolean worse = false;
    int solvedAt = Integer.MAX_VALUE;
    rider.ride(List.of());
    for (int moto = 1; moto <= MOTOS && solvedAt > moto; moto++) {
      Optional<Method.Choice> choice = method.next(rider, book);
      double before = rider.discomfort(0);
      rider.ride(choice.map(Method.Choice::change).stream().toList());
      double after = rider.discomfort(0);
      double chance = choice.flatMap(Method.Choice::chance).orElse(0.0);
      if (chance >= 0.75 && chance <= 0.85) {
        counts[3]++;
        counts[4] += after < before ? 1 : 0;
      }
      worse |= after > 1.5 * rider.start();
      if (rider.solved()) {
        solvedAt = moto;
      }
    }
    counts[0] += solvedAt <= 8 ? 1 : 0;
    counts[1] += solvedAt <= MOTOS ? 1 : 0;
    counts[2] += worse ? 1 : 0;
  }
}
