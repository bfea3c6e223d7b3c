package rutbook.report;

import java.util.List;
import rutbook.words.SafeText;

/**
 * One cell of a comma-separated file by RFC 4180. A text that a spreadsheet would take for a
 * formula gets an apostrophe before it, which a spreadsheet shows as text.
 */
record CsvCell(String written) {
  private static final String FORMULA = "=+-@\uFF1D\uFF0B\uFF0D\uFF20|%";

  /** Text, whoever wrote it. */
  static CsvCell text(String text) {
    String safe = SafeText.line(text).strip();
    boolean formula = !safe.isEmpty() && FORMULA.indexOf(safe.charAt(0)) >= 0;
    return new CsvCell(quoted(formula ? "'" + safe : safe));
  }

  /** A number that the program made, with a point and without an exponent. */
  static CsvCell number(String number) {
    return new CsvCell(number);
  }

  static String line(List<CsvCell> cells) {
    return String.join(",", cells.stream().map(CsvCell::written).toList()) + "\r\n";
  }

  private static String quoted(String text) {
    boolean plain = text.indexOf(',') < 0 && text.indexOf('"') < 0;
    return plain ? text : "\"" + text.replace("\"", "\"\"") + "\"";
  }
}
