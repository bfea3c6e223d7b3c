package rutbook.cli;

import java.util.ArrayList;
import java.util.List;
import rutbook.words.Table;

/** A table in columns: names to the left, values to the right; wrapped names where it is wide. */
final class Columns {
  private static final int GAP = 2;
  private static final int LEAST_NAME = 12;

  private final Terminal terminal;
  private final int indent;

  Columns(Terminal terminal, int indent) {
    this.terminal = terminal;
    this.indent = indent;
  }

  void print(Table table) {
    List<List<String>> lines = new ArrayList<>();
    if (table.head().stream().anyMatch(name -> !name.isEmpty())) {
      lines.add(shown(table.head()));
    }
    table.rows().forEach(row -> lines.add(shown(row)));
    int[] widths = new int[table.head().size()];
    for (List<String> line : lines) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], line.get(i).length());
      }
    }
    widths[0] = Math.min(widths[0], room(widths));
    lines.forEach(line -> line(line, widths));
  }

  /** What the values leave for the names. */
  private int room(int[] widths) {
    int values = 0;
    for (int i = 1; i < widths.length; i++) {
      values += GAP + widths[i];
    }
    return Math.max(LEAST_NAME, Terminal.WIDTH - indent - values);
  }

  private List<String> shown(List<String> cells) {
    return cells.stream().map(terminal::shown).toList();
  }

  /** A name too wide for its column goes on above, the values beside its last part. */
  private void line(List<String> cells, int[] widths) {
    String name = cells.get(0);
    while (name.length() > widths[0]) {
      int cut = name.lastIndexOf(' ', widths[0]);
      int end = cut > 0 ? cut : widths[0];
      terminal.plain(" ".repeat(indent) + name.substring(0, end));
      name = name.substring(end).stripLeading();
    }
    StringBuilder line = new StringBuilder(" ".repeat(indent));
    line.append(name).append(" ".repeat(widths[0] - name.length()));
    for (int i = 1; i < widths.length; i++) {
      String cell = cells.get(i);
      line.append(" ".repeat(GAP + widths[i] - cell.length())).append(cell);
    }
    terminal.plain(line.toString());
  }
}
