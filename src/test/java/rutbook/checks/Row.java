package rutbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;

/** One outside check value, with what went in, what must come out, how near, and who says so. */
public final class Row {

  /** Doubles hold a decimal of the row to this many parts; "exact" is exact as far as they go. */
  private static final double DOUBLE = 1e-13;

  private final JsonNode node;

  Row(JsonNode node) {
    this.node = node;
  }

  public String id() {
    return node.path("id").asText();
  }

  public String topic() {
    return node.path("topic").asText();
  }

  public String source() {
    return node.path("source").asText();
  }

  /** The unit of what is expected. */
  public String unit() {
    return node.path("unit").asText();
  }

  /** A number that goes in. */
  public double in(String name) {
    JsonNode value = node.path("inputs").path(name);
    assertThat(value.isNumber()).as("%s has the number %s", id(), name).isTrue();
    return value.doubleValue();
  }

  public boolean has(String name) {
    return node.path("inputs").has(name);
  }

  public String text(String name) {
    JsonNode value = node.path("inputs").path(name);
    assertThat(value.isTextual()).as("%s has the text %s", id(), name).isTrue();
    return value.asText();
  }

  public double[] list(String name) {
    return numbers(node.path("inputs").path(name));
  }

  public double[][] table(String name) {
    return rows(node.path("inputs").path(name));
  }

  public JsonNode expected() {
    return node.path("expected");
  }

  public double[] expectedList(String name) {
    return numbers(name.isEmpty() ? expected() : expected().path(name));
  }

  public double[][] expectedTable(String name) {
    return rows(expected().path(name));
  }

  /** The only number expected. */
  public double value() {
    assertThat(expected().isNumber()).as("%s expects one number", id()).isTrue();
    return expected().doubleValue();
  }

  /** How far off its only number may be. */
  public Offset<Double> near() {
    return within(allowed(value()));
  }

  /** The only number expected. */
  public void mustBe(double actual) {
    near(expected(), actual, "value");
  }

  /** One of the named numbers expected. */
  public void mustBe(String name, double actual) {
    near(expected().path(name), actual, name);
  }

  /** A named list of numbers expected; the empty name is the row's own list. */
  public void mustBe(String name, double[] actual) {
    JsonNode wanted = name.isEmpty() ? expected() : expected().path(name);
    assertThat(actual).as("%s %s (%s)", id(), name, source()).hasSize(wanted.size());
    for (int i = 0; i < actual.length; i++) {
      near(wanted.path(i), actual[i], name + "[" + i + "]");
    }
  }

  private void near(JsonNode wanted, double actual, String name) {
    assertThat(wanted.isNumber()).as("%s expects a number %s", id(), name).isTrue();
    double value = wanted.doubleValue();
    assertThat(actual)
        .as("%s %s (%s)", id(), name, source())
        .isCloseTo(value, within(allowed(value)));
  }

  /** How far off a value of this size may be by the row's own tolerance. */
  public double allowed(double value) {
    JsonNode tolerance = node.path("tolerance");
    if (tolerance.has("abs")) {
      return tolerance.path("abs").doubleValue();
    }
    if (tolerance.has("rel")) {
      return Math.abs(value) * tolerance.path("rel").doubleValue();
    }
    assertThat(tolerance.path("exact").asBoolean()).as("%s has a tolerance", id()).isTrue();
    return Math.abs(value) * DOUBLE;
  }

  private static double[] numbers(JsonNode list) {
    double[] numbers = new double[list.size()];
    for (int i = 0; i < numbers.length; i++) {
      assertThat(list.path(i).isNumber()).isTrue();
      numbers[i] = list.path(i).doubleValue();
    }
    return numbers;
  }

  private static double[][] rows(JsonNode table) {
    List<double[]> rows = new ArrayList<>();
    table.forEach(line -> rows.add(numbers(line)));
    return rows.toArray(double[][]::new);
  }

  @Override
  public String toString() {
    return id() + " (" + source() + ")";
  }
}
