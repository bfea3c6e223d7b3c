package rutbook.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rutbook.imports.ImportException.Fault;

/**
 * Tables out of bytes. The examples named by number are those of RFC 4180, "Common Format and MIME
 * Type for Comma-Separated Values (CSV) Files", section 2, definition of the CSV format.
 */
class CsvTextTest {
  private static Grid read(String text) {
    return CsvText.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<List<String>> cells(String text) {
    return CsvText.read(text.getBytes(StandardCharsets.UTF_8), Optional.of(',')).rows().stream()
        .map(Grid.Row::cells)
        .toList();
  }

  private static final List<List<String>> TWO =
      List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));

  @Test
  void example1OfTheStandardEachRecordOnItsLine() {
    assertThat(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")).isEqualTo(TWO);
  }

  @Test
  void example2OfTheStandardTheLastLineMayEndWithout() {
    assertThat(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx")).isEqualTo(TWO);
  }

  @Test
  void example3OfTheStandardHeadings() {
    Grid grid =
        read("field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")
            .withHeadings(true);
    assertThat(grid.headings()).containsOnly("field_name").hasSize(3);
    assertThat(grid.rows().stream().map(Grid.Row::cells)).isEqualTo(TWO);
  }

  @Test
  void example5OfTheStandardQuotes() {
    assertThat(cells("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx")).isEqualTo(TWO);
  }

  @Test
  void example6OfTheStandardALineEndWithinQuotes() {
    Grid grid = read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx");
    assertThat(grid.rows().stream().map(Grid.Row::cells))
        .isEqualTo(List.of(List.of("aaa", "b\r\nbb", "ccc"), List.of("zzz", "yyy", "xxx")));
    assertThat(grid.rows().get(1).line()).as("lines are counted as an editor does").isEqualTo(3);
  }

  @Test
  void example7OfTheStandardAQuoteWithinQuotes() {
    assertThat(cells("\"aaa\",\"b\"\"bb\",\"ccc\""))
        .isEqualTo(List.of(List.of("aaa", "b\"bb", "ccc")));
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t", "|"})
  void whatPartsTheCellsIsFound(String separator) {
    Grid grid = read("Lap,Time\n1,1:52.3\n2,1:51.9\n".replace(",", separator));
    assertThat(grid.separator()).isEqualTo(separator.charAt(0));
    assertThat(grid.headings()).containsExactly("Lap", "Time");
    assertThat(grid.rows().get(1).cells()).containsExactly("2", "1:51.9");
  }

  @Test
  void aCommaThatPartsDecimalsDoesNotPartCells() {
    Grid grid = read("1;1:52,3\n2;1:51,9\n");
    assertThat(grid.separator()).isEqualTo(';');
    assertThat(grid.values(1)).containsExactly("1:52,3", "1:51,9");
    assertThat(DecimalMark.of(grid)).isEqualTo(DecimalMark.COMMA);
  }

  @Test
  void aSpreadsheetMaySayItself() {
    Grid grid = read("sep=;\r\na;b\r\n1;2\r\n");
    assertThat(grid.headings()).containsExactly("a", "b");
    assertThat(grid.rows()).containsExactly(new Grid.Row(3, List.of("1", "2")));
  }

  @Test
  void lettersAreReadWhateverWroteThem() {
    String text = "Fahrer;Zeit\nMüller;1:52,3\nÅse;1:53,0\n";
    for (Charset charset : List.of(StandardCharsets.UTF_8, Charset.forName("windows-1252"))) {
      Grid grid = CsvText.read(text.getBytes(charset));
      assertThat(grid.values(0)).as(charset.name()).containsExactly("Müller", "Åse");
      assertThat(grid.charset()).isEqualTo(charset);
    }
    for (Charset marked :
        List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
      assertThat(CsvText.read(("\uFEFF" + text).getBytes(marked)).headings())
          .as("with a byte order mark, " + marked)
          .containsExactly("Fahrer", "Zeit");
    }
  }

  @Test
  void aTitleAboveTheTableIsSetAside() {
    Grid grid = read("Club day,,\n\nPos,Name,Lap Tm\n1,A,1:52.3\n2,B,1:53.0\n");
    assertThat(grid.above()).containsExactly(new Grid.Row(1, List.of("Club day", "", "")));
    assertThat(grid.headings()).containsExactly("Pos", "Name", "Lap Tm");
    assertThat(grid.rows().get(0).line()).isEqualTo(4);
  }

  @Test
  void aTableWithoutHeadingsHasNone() {
    Grid grid = read("1,1:52.3\n2,1:51.9\n");
    assertThat(grid.hasHeadings()).isFalse();
    assertThat(grid.rows()).hasSize(2);
    assertThat(grid.withHeadings(true).withHeadings(false)).isEqualTo(grid);
  }

  @Test
  void rowsAndColumnsChangeOver() {
    Grid grid = read("Setting,3 May,10 May\nFork compression,12,14\nFork rebound,11,11\n").turned();
    assertThat(grid.headings()).containsExactly("Setting", "Fork compression", "Fork rebound");
    assertThat(grid.rows().get(1).cells()).containsExactly("10 May", "14", "11");
  }

  private static Fault fault(byte[] bytes) {
    return catchThrowableOfType(ImportException.class, () -> CsvText.read(bytes)).fault();
  }

  private static Fault fault(String text) {
    return fault(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void whatIsTooMuchIsRefusedBeforeItIsBuilt() {
    assertThat(fault(new byte[CsvText.MOST_BYTES + 1])).isEqualTo(Fault.TOO_LARGE);
    assertThat(fault("1,2\n".repeat(CsvText.MOST_ROWS + 1))).isEqualTo(Fault.TOO_MANY_ROWS);
    assertThat(fault("1,".repeat(CsvText.MOST_COLUMNS) + "1\n")).isEqualTo(Fault.TOO_MANY_COLUMNS);
    assertThat(fault("a,b\n" + "x".repeat(CsvText.LONGEST_CELL + 1) + ",1\n"))
        .isEqualTo(Fault.CELL_TOO_LONG);
    assertThat(read("1,2\n".repeat(CsvText.MOST_ROWS)).rows()).hasSize(CsvText.MOST_ROWS);
  }

  @Test
  void whatIsNoTableIsRefused() {
    assertThat(fault("")).isEqualTo(Fault.EMPTY);
    assertThat(fault(" \n,,\n")).isEqualTo(Fault.EMPTY);
    assertThat(fault("a,b\n\"never closed,1\n2,3\n")).isEqualTo(Fault.NOT_A_TABLE);
    assertThat(fault("PK\u0003\u0004\0\0,1\n")).isEqualTo(Fault.NOT_TEXT);
    assertThat(fault(new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, (byte) 0xFF}))
        .isEqualTo(Fault.NOT_TEXT);
  }

  @Property(tries = 3000, seed = "4180")
  void whateverTheBytesItIsATableOrASentence(@ForAll @Size(max = 400) byte[] bytes) {
    try {
      Grid grid = CsvText.read(bytes);
      assertThat(grid.rows()).allMatch(row -> row.cells().size() == grid.columns());
      LapImport.of(grid, LapGuess.of(grid), LapImport.Wanted.ALL);
    } catch (ImportException sentence) {
      assertThat(sentence.fault()).isNotNull();
    }
  }
}
