package rutbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rutbook.physics.FluidChecksTest;
import rutbook.physics.GasChecksTest;
import rutbook.physics.SagChecksTest;
import rutbook.physics.SteeringChecksTest;
import rutbook.stats.StatsChecksTest;

class EveryCheckIsUsedTest {

  /** The uses of each topic, held by the test class that runs them. */
  private static final Map<String, Uses> TOPICS =
      Map.of(
          "a-viscosity", FluidChecksTest.VISCOSITY,
          "b-gas", GasChecksTest.USES,
          "c-geometry", SteeringChecksTest.GEOMETRY,
          "d-sag", SagChecksTest.USES,
          "f-oil", FluidChecksTest.OIL,
          "g-stats", StatsChecksTest.USES,
          "i-logdec", SteeringChecksTest.DECREMENT);

  /** Rows that belong to other parts of the program, by beginning, and the test that uses them. */
  private static final Map<String, String> ELSEWHERE =
      Map.of(
          "h.", "rutbook.units.UnitChecksTest",
          "e.clicks.", "rutbook.units.UnitChecksTest",
          "f.interval.", "rutbook.rebuild.IntervalsTest");

  @Test
  void everyRowHasExactlyOneTestHereOrANamedOneElsewhere() {
    for (Row row : Checks.all()) {
      if (elsewhere(row).isEmpty()) {
        assertThat(TOPICS).as("%s", row).containsKey(row.topic());
        assertThat(TOPICS.get(row.topic()).beginningsOf(row.id())).as("%s", row).hasSize(1);
      } else {
        assertThat(elsewhere(row)).as("%s", row).hasSize(1);
      }
    }
  }

  @Test
  void everyTestHasARow() {
    TOPICS.forEach(
        (topic, uses) -> {
          List<Row> rows = Checks.topic(topic);
          for (String beginning : uses.beginnings()) {
            assertThat(rows)
                .as("rows for %s", beginning)
                .anyMatch(row -> uses.beginningsOf(row.id()).contains(beginning));
          }
        });
  }

  @Test
  void aRowThatNobodyUsesIsFound() {
    Row stranger =
        new Row(JsonNodeFactory.instance.objectNode().put("id", "a.nobody").put("topic", "a"));
    assertThatThrownBy(() -> FluidChecksTest.VISCOSITY.run(stranger))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("a.nobody")
        .hasMessageContaining("0 tests");
  }

  @Test
  void theTestsElsewhereAreThere() {
    for (String test : ELSEWHERE.values()) {
      assertThatCode(() -> Class.forName(test)).as(test).doesNotThrowAnyException();
    }
  }

  @Test
  void idsAreUnique() {
    Set<String> ids = new TreeSet<>();
    for (Row row : Checks.all()) {
      assertThat(ids.add(row.id())).as("%s", row).isTrue();
    }
    assertThat(ids).hasSizeGreaterThan(180);
  }

  private static List<String> elsewhere(Row row) {
    return ELSEWHERE.keySet().stream().filter(row.id()::startsWith).toList();
  }
}
