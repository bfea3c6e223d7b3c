package rutbook.words;

import java.util.List;

/**
 * Values in columns, for whatever shows them; the first column names the row.
 *
 * @param head a name for each column, with its unit
 * @param rows each as wide as the head
 */
public record Table(List<String> head, List<List<String>> rows) {
  public Table {
    head = List.copyOf(head);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != head.size()) {
        throw new IllegalArgumentException(
            "a row of " + row.size() + " cells under " + head.size() + " columns");
      }
    }
  }
}
