package rutbook.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Which test uses which rows, by the beginning of their ids; a row without one is an error. */
public final class Uses {

  private final Map<String, Consumer<Row>> tests = new LinkedHashMap<>();

  /** These uses and one more: the rows whose id is this, or begins with it when it ends in ".". */
  public Uses use(String beginning, Consumer<Row> test) {
    if (tests.put(beginning, test) != null) {
      throw new IllegalArgumentException("two tests for " + beginning);
    }
    return this;
  }

  /** Runs the one test of a row. */
  public void run(Row row) {
    List<String> found = beginningsOf(row.id());
    if (found.size() != 1) {
      throw new AssertionError(row + " has " + found.size() + " tests: " + found);
    }
    tests.get(found.get(0)).accept(row);
  }

  /** The uses that apply to an id: exactly one when all is well. */
  public List<String> beginningsOf(String id) {
    return tests.keySet().stream()
        .filter(key -> key.equals(id) || key.endsWith(".") && id.startsWith(key))
        .toList();
  }

  public List<String> beginnings() {
    return List.copyOf(tests.keySet());
  }
}
