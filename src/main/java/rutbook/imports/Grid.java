package rutbook.imports;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * A file as rows of cells: what stood above the headings, the headings if there are any, and the
 * rows below. Cells are stripped of spaces around them; every row has as many as the widest.
 *
 * @param separator what parts the cells
 * @param charset the letters that the bytes were read as
 * @param above rows before the table begins, such as a title
 * @param headings empty for a table without
 */
public record Grid(
    char separator, Charset charset, List<Row> above, List<String> headings, List<Row> rows) {

  /** One row, with the line of the file that it begins on, from 1. */
  public record Row(int line, List<String> cells) {
    public Row {
      cells = List.copyOf(cells);
    }

    boolean isBlank() {
      return cells.stream().allMatch(String::isEmpty);
    }
  }

  public Grid {
    above = List.copyOf(above);
    headings = List.copyOf(headings);
    rows = List.copyOf(rows);
  }

  /** From all rows of a file, of which the table begins at one that is as wide as most. */
  static Grid of(char separator, Charset charset, List<Row> all) {
    List<Row> filled = all.stream().filter(row -> !row.isBlank()).toList();
    if (filled.isEmpty()) {
      throw new ImportException(ImportException.Fault.EMPTY);
    }
    int width = filled.stream().mapToInt(row -> row.cells().size()).max().orElseThrow();
    int usual = usualWidth(filled);
    int first = 0;
    while (first < filled.size() - 1 && width(filled.get(first)) * 2 <= usual) {
      first++;
    }
    List<Row> table =
        filled.subList(first, filled.size()).stream().map(row -> padded(row, width)).toList();
    Grid plain = new Grid(separator, charset, filled.subList(0, first), List.of(), table);
    return plain.withHeadings(Headings.areFirst(table));
  }

  /** Cells up to the last that holds something. */
  private static int width(Row row) {
    int width = row.cells().size();
    while (width > 0 && row.cells().get(width - 1).isEmpty()) {
      width--;
    }
    return width;
  }

  private static int usualWidth(List<Row> rows) {
    Map<Integer, Integer> counts = new HashMap<>();
    rows.forEach(row -> counts.merge(width(row), 1, Integer::sum));
    return counts.entrySet().stream()
        .max(
            Map.Entry.<Integer, Integer>comparingByValue()
                .thenComparing(Map.Entry.comparingByKey()))
        .orElseThrow()
        .getKey();
  }

  private static Row padded(Row row, int width) {
    List<String> cells = new ArrayList<>(row.cells());
    while (cells.size() < width) {
      cells.add("");
    }
    return new Row(row.line(), cells);
  }

  /** The same with its first row as headings, or with its headings as a row like any other. */
  public Grid withHeadings(boolean first) {
    if (first == hasHeadings()) {
      return this;
    }
    List<Row> next = new ArrayList<>(rows);
    if (first) {
      Row top = next.remove(0);
      return new Grid(separator, charset, above, top.cells(), next);
    }
    int line = rows.isEmpty() ? above.size() + 1 : Math.max(1, rows.get(0).line() - 1);
    next.add(0, new Row(line, headings));
    return new Grid(separator, charset, above, List.of(), next);
  }

  /** The same with rows and columns changed over, for a table that has its headings at the left. */
  public Grid turned() {
    List<List<String>> all = new ArrayList<>();
    if (hasHeadings()) {
      all.add(headings);
    }
    rows.forEach(row -> all.add(row.cells()));
    List<Row> turned = new ArrayList<>();
    for (int column = 0; column < columns(); column++) {
      int place = column;
      turned.add(new Row(column + 1, all.stream().map(cells -> cells.get(place)).toList()));
    }
    Grid plain = new Grid(separator, charset, above, List.of(), turned);
    return plain.withHeadings(Headings.areFirst(turned));
  }

  /** By which a table of the same make is known again: its headings, or how wide it is. */
  public String fingerprint() {
    String made = hasHeadings() ? String.join("\n", headings) : Integer.toString(columns());
    return UUID.nameUUIDFromBytes(made.getBytes(StandardCharsets.UTF_8)).toString();
  }

  public boolean hasHeadings() {
    return !headings.isEmpty();
  }

  public int columns() {
    return hasHeadings() ? headings.size() : rows.isEmpty() ? 0 : rows.get(0).cells().size();
  }

  /** The heading of a column, counted from 0; empty where there is none. */
  public String heading(int column) {
    return hasHeadings() ? headings.get(column) : "";
  }

  /** What stands in a column, without its empty cells. */
  public List<String> values(int column) {
    return rows.stream()
        .map(row -> row.cells().get(column))
        .filter(cell -> !cell.isEmpty())
        .toList();
  }

  /** The column of a heading, or of a number counted from 1. */
  public int column(String named) {
    for (int i = 0; i < headings.size(); i++) {
      if (headings.get(i).equalsIgnoreCase(named.strip())) {
        return i;
      }
    }
    if (named.strip().matches("\\d{1,4}")) {
      int column = Integer.parseInt(named.strip()) - 1;
      if (column >= 0 && column < columns()) {
        return column;
      }
    }
    throw new ImportException(ImportException.Fault.NO_SUCH_COLUMN, named.strip());
  }
}
