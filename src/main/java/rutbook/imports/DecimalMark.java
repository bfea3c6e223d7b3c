package rutbook.imports;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What parts the decimals of a file's numbers. */
public enum DecimalMark {
  POINT(Locale.ROOT),
  COMMA(Locale.GERMANY);

  private static final Pattern COMMAS = Pattern.compile("\\d,\\d");
  private static final Pattern POINTS = Pattern.compile("\\d\\.\\d");

  private final Locale locale;

  DecimalMark(Locale locale) {
    this.locale = locale;
  }

  /** A language that writes numbers so. */
  Locale locale() {
    return locale;
  }

  /** A comma where cells have one between digits and none has a point; otherwise a point. */
  static DecimalMark of(Grid grid) {
    List<String> cells =
        grid.rows().stream()
            .flatMap(row -> row.cells().stream())
            .filter(cell -> !Days.isDay(cell))
            .toList();
    boolean commas = cells.stream().anyMatch(cell -> COMMAS.matcher(cell).find());
    boolean points = cells.stream().anyMatch(cell -> POINTS.matcher(cell).find());
    return commas && !points ? COMMA : POINT;
  }
}
