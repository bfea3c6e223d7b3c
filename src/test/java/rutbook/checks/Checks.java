package rutbook.checks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** The outside check values that the calculations are held to. */
public final class Checks {

  private Checks() {}

  /** Every row, in the file's order. */
  public static List<Row> all() {
    try (InputStream in = Checks.class.getResourceAsStream("checks.json")) {
      List<Row> rows = new ArrayList<>();
      for (JsonNode node : new ObjectMapper().readTree(in)) {
        rows.add(new Row(node));
      }
      return List.copyOf(rows);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The rows of one topic. */
  public static List<Row> topic(String topic) {
    return all().stream().filter(row -> row.topic().equals(topic)).toList();
  }
}
