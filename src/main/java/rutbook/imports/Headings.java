package rutbook.imports;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether a table begins with headings, and the words that one is made of. */
final class Headings {
  private Headings() {}

  /** Headings hold no digit that the rows below have in the same column. */
  static boolean areFirst(List<Grid.Row> table) {
    if (table.size() < 2) {
      return false;
    }
    List<String> first = table.get(0).cells();
    boolean differ = false;
    for (int column = 0; column < first.size(); column++) {
      String top = first.get(column);
      if (isValue(top)) {
        return false;
      }
      int place = column;
      differ |=
          !top.isEmpty()
              && table.stream()
                  .skip(1)
                  .map(row -> row.cells().get(place))
                  .anyMatch(Headings::isValue);
    }
    return differ;
  }

  /** A number, a time or a day: something that begins with a digit or a sign. */
  private static boolean isValue(String cell) {
    return cell.matches("[-+#]?\\d.*");
  }

  /** The words of a heading in small letters, without what stands in brackets. */
  static List<String> words(String heading) {
    String plain = heading.replaceAll("[(\\[].*?[)\\]]", " ");
    return Stream.of(plain.split("[^\\p{L}\\p{N}]+"))
        .filter(word -> !word.isEmpty())
        .map(word -> word.toLowerCase(Locale.ROOT))
        .collect(Collectors.toList());
  }

  /** What stands in brackets at the end, such as the unit of {@code Oil (mL)}; may be empty. */
  static String bracketed(String heading) {
    java.util.regex.Matcher last =
        java.util.regex.Pattern.compile("[(\\[]([^()\\[\\]]{1,20})[)\\]]\\s*$").matcher(heading);
    return last.find() ? last.group(1).strip() : "";
  }
}
