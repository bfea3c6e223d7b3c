package rutbook.riders;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.json.RulesJson;
import rutbook.notebook.Bench;
import rutbook.notebook.Bounds;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.RuleBook;
import rutbook.reasoning.Suggestion;

class RidersTest {
  @Test
  void moreLinearRidersAreSolvedThanByThePrintedChartAndFarMoreThanByChance() {
    var kind = SimulatedRider.Kind.LINEAR;
    long ours = solved(kind, RidersBench.Way.REASONING);
    long chart = solved(kind, RidersBench.Way.CHART);
    long random = solved(kind, RidersBench.Way.RANDOM);
    assertThat(ours).isGreaterThan(chart).isGreaterThan(random + 5);
  }

  private static long solved(SimulatedRider.Kind kind, RidersBench.Way way) {
    return RidersBench.run(kind, way, 30, 1, 2).stream()
        .filter(each -> each.solvedAt() <= RidersBench.MOTOS)
        .count();
  }

  @Test
  void everySuggestionIsInsideItsLimitsAndTheSameForTheSameNotebook() {
    RuleBook book = RulesJson.ofTheTrade();
    for (long seed = 1; seed <= 10; seed++) {
      SimulatedRider rider = new SimulatedRider(SimulatedRider.Kind.MIXTURE, book, seed);
      rider.ride(List.of());
      for (int moto = 0; moto < 8; moto++) {
        var notebook = rider.notebook();
        NextChange next = NextChange.of(notebook, Bench.BIKE, book);
        assertThat(NextChange.of(notebook, Bench.BIKE, book).suggestions())
            .isEqualTo(next.suggestions());
        for (Suggestion each : next.suggestions()) {
          assertThat(Bounds.isInside(Bench.sheet(), each.setting(), each.to())).isTrue();
          if (next.kind() != NextChange.Kind.TEST && each.tells().isEmpty()) {
            assertThat(each.net()).isGreaterThanOrEqualTo(0.1);
          }
        }
        rider.ride(
            Method.reasoning().next(rider, book).map(Method.Choice::change).stream().toList());
      }
    }
  }
}
