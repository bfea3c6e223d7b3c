package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Values in columns, for whatever shows them; the first column names the row.
 *
 * @param head a name for each column, with its unit
 * @param rows each as wide as the head
 */
public record Table(List<String> head, List<List<String>> rows) {
  private static final Pattern NUMBER =
      Pattern.compile("([+−]?\\d+)(?:([.,])(\\d+))?(?=$|\\s|°)(.*)");

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

  /**
   * The same with as many decimals in every number of a column, so that points stand under points.
   *
   * @param first the first column that holds numbers
   * @param point decimal sign of the language
   */
  Table aligned(int first, char point) {
    List<List<String>> next = new ArrayList<>();
    rows.forEach(row -> next.add(new ArrayList<>(row)));
    for (int column = first; column < head.size(); column++) {
      int decimals = 0;
      for (List<String> row : rows) {
        Matcher number = NUMBER.matcher(row.get(column));
        if (number.matches() && number.group(3) != null) {
          decimals = Math.max(decimals, number.group(3).length());
        }
      }
      for (List<String> row : next) {
        row.set(column, padded(row.get(column), decimals, point));
      }
    }
    return new Table(head, next);
  }

  private static String padded(String cell, int decimals, char point) {
    Matcher number = NUMBER.matcher(cell);
    if (decimals == 0 || !number.matches()) {
      return cell;
    }
    String there = number.group(3) == null ? "" : number.group(3);
    String zeros = "0".repeat(Math.max(0, decimals - there.length()));
    return number.group(1) + point + there + zeros + number.group(4);
  }
}
