package rutbook.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rutbook.imports.ImportException.Fault;

/** A mapping in one line: parts such as {@code time=3} with commas between them. */
final class MappingText {
  private static final int MOST_PARTS = 2 * CsvText.MOST_COLUMNS;

  private final List<String> parts = new ArrayList<>();

  /** One part of the line. */
  record Part(String name, String value) {
    int column(Grid grid) {
      return grid.column(value);
    }

    <E extends Enum<E>> E word(E[] all) {
      return Stream.of(all)
          .filter(each -> written(each).equals(value.toLowerCase(Locale.ROOT)))
          .findFirst()
          .orElseThrow(() -> new ImportException(Fault.BAD_MAPPING, value));
    }
  }

  /** A column, counted from 0 here and from 1 in the text. */
  void add(String name, int column) {
    parts.add(name + "=" + (column + 1));
  }

  void word(String name, Enum<?> word) {
    parts.add(name + "=" + written(word));
  }

  private static String written(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static List<Part> parts(String text) {
    List<Part> parts = new ArrayList<>();
    for (String each : text.split(",")) {
      int sign = each.indexOf('=');
      if (sign <= 0 || parts.size() == MOST_PARTS) {
        throw new ImportException(Fault.BAD_MAPPING, each.strip());
      }
      parts.add(
          new Part(
              each.substring(0, sign).strip().toLowerCase(Locale.ROOT),
              each.substring(sign + 1).strip()));
    }
    return parts;
  }

  @Override
  public String toString() {
    return String.join(",", parts);
  }
}
