package rutbook.imports;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import rutbook.imports.ImportException.Fault;

/**
 * Reads comma-separated values as RFC 4180 has them, and as spreadsheets write them where a comma
 * parts decimals: with semicolons or tabs. Sizes are looked at before anything is made of them.
 */
public final class CsvText {
  /** Bytes of a file: 8 MiB. */
  public static final int MOST_BYTES = 8 << 20;

  public static final int MOST_ROWS = 20_000;
  public static final int MOST_COLUMNS = 200;
  public static final int LONGEST_CELL = 2_000;

  /** So many records are looked at to find what parts the cells. */
  private static final int LOOKED_AT = 60;

  /** The line by which spreadsheets tell one another what parts the cells. */
  private static final Pattern NAMED = Pattern.compile("sep=([,;|\\t])\\R");

  /** The first of those that fit equally well: the later ones also stand within cells. */
  private static final List<Character> SEPARATORS = List.of('\t', ';', '|', ',');

  private CsvText() {}

  /**
   * @throws ImportException when nothing can be made of it
   */
  public static Grid read(byte[] bytes) {
    return read(bytes, Optional.empty());
  }

  /**
   * @param said the separator; looked for where it is empty
   * @throws ImportException when nothing can be made of it
   */
  public static Grid read(byte[] bytes, Optional<Character> said) {
    if (bytes.length > MOST_BYTES) {
      throw new ImportException(Fault.TOO_LARGE, bytes.length, MOST_BYTES);
    }
    Decoded decoded = Decoded.of(bytes);
    Matcher named = NAMED.matcher(decoded.text());
    boolean isNamed = named.lookingAt();
    String text = isNamed ? decoded.text().substring(named.end()) : decoded.text();
    char separator = said.orElseGet(() -> isNamed ? named.group(1).charAt(0) : separator(text));
    int firstLine = isNamed ? 2 : 1;
    return Grid.of(separator, decoded.charset(), rows(text, separator, MOST_ROWS, firstLine, true));
  }

  /** The separator that gives most rows the same number of cells, more than one. */
  private static char separator(String text) {
    char best = ',';
    double bestShare = 0;
    for (char each : SEPARATORS) {
      double share = share(text, each);
      if (share > bestShare) {
        best = each;
        bestShare = share;
      }
    }
    return best;
  }

  private static double share(String text, char separator) {
    List<Grid.Row> rows;
    try {
      rows =
          rows(text, separator, LOOKED_AT, 1, false).stream()
              .filter(row -> !row.isBlank())
              .toList();
    } catch (ImportException notWithThis) {
      return 0;
    }
    long most = 0;
    for (Grid.Row row : rows) {
      int cells = row.cells().size();
      long same = rows.stream().filter(each -> each.cells().size() == cells).count();
      most = cells > 1 ? Math.max(most, same) : most;
    }
    return rows.isEmpty() ? 0 : (double) most / rows.size();
  }

  private static List<Grid.Row> rows(
      String text, char separator, int most, int firstLine, boolean all) {
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).get();
    List<Grid.Row> rows = new ArrayList<>();
    int line = firstLine;
    try (CSVParser parser =
        CSVParser.builder().setReader(new StringReader(text)).setFormat(format).get()) {
      for (CSVRecord record : parser) {
        if (rows.size() == most) {
          if (all) {
            throw new ImportException(Fault.TOO_MANY_ROWS, most);
          }
          return rows;
        }
        rows.add(new Grid.Row(line, cells(record, line)));
        line = (int) parser.getCurrentLineNumber() + firstLine;
      }
    } catch (IOException | UncheckedIOException | IllegalStateException noTable) {
      throw new ImportException(Fault.NOT_A_TABLE, line);
    }
    return rows;
  }

  private static List<String> cells(CSVRecord record, int line) {
    if (record.size() > MOST_COLUMNS) {
      throw new ImportException(Fault.TOO_MANY_COLUMNS, line, record.size(), MOST_COLUMNS);
    }
    List<String> cells = new ArrayList<>(record.size());
    for (int i = 0; i < record.size(); i++) {
      String cell = record.get(i);
      if (cell.length() > LONGEST_CELL) {
        throw new ImportException(Fault.CELL_TOO_LONG, line, i + 1, cell.length(), LONGEST_CELL);
      }
      cells.add(cell.strip());
    }
    return cells;
  }
}
