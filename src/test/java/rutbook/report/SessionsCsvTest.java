package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.units.Display;
import rutbook.words.Phrases;
import rutbook.words.SafeText;

class SessionsCsvTest {

  private static List<List<String>> rows(Notebook notebook, Phrases phrases) {
    Timeline timeline = SampleCards.timeline(notebook);
    return parsed(SessionsCsv.of(notebook.shelf(), timeline, phrases, timeline.sessions()));
  }

  /** As RFC 4180, section 2, has it: CRLF ends a record, quotes are doubled inside quotes. */
  private static List<List<String>> parsed(String text) {
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char each = text.charAt(i);
      if (quoted) {
        if (each == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
          cell.append('"');
          i++;
        } else if (each == '"') {
          quoted = false;
        } else {
          cell.append(each);
        }
      } else if (each == '"') {
        quoted = true;
      } else if (each == ',' || each == '\r') {
        row.add(cell.toString());
        cell.setLength(0);
        if (each == '\r') {
          assertThat(text.charAt(++i)).isEqualTo('\n');
          rows.add(row);
          row = new ArrayList<>();
        }
      } else {
        cell.append(each);
      }
    }
    assertThat(row).isEmpty();
    return rows;
  }

  @Property(tries = 500, seed = "42")
  void anyCellComesBackAsItWasUnlessItLooksLikeAFormula(@ForAll String typed) {
    String read =
        parsed(CsvCell.line(List.of(CsvCell.text(typed), CsvCell.text("b")))).get(0).get(0);
    String safe = SafeText.line(typed).strip();
    assertThat(read).isIn(safe, "'" + safe);
    assertThat(read).doesNotMatch("[=+\\-@\\t\\r].*");
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", " =1", "\uFF1D1", "|calc"})
  void whatASpreadsheetWouldRunIsShownAsText(String typed) {
    assertThat(parsed(CsvCell.line(List.of(CsvCell.text(typed)))).get(0).get(0)).startsWith("'");
  }

  @Test
  void everyMotoHasARowAndEveryRowEveryColumn() {
    Notebook season = Samples.season();
    List<List<String>> rows = rows(season, SampleCards.phrases(season));
    int motos =
        SampleCards.timeline(season).sessions().stream().mapToInt(it -> it.motos().size()).sum();
    assertThat(rows).hasSize(motos + 1);
    assertThat(rows).allMatch(row -> row.size() == rows.get(0).size());
    assertThat(rows.get(0)).startsWith("day", "track").contains("Fork compression, left (clicks)");
    assertThat(rows.get(1))
        .startsWith("2026-03-07", "Quarry Hollow", "Imke Varrel", "Corvane 250", "1", "4");
    assertThat(rows.get(1).get(rows.get(0).indexOf("Outer chamber oil, right (mL)")))
        .isEqualTo("335");
  }

  @Test
  void numbersAreInTheRidersUnitsWithAPoint() {
    List<List<String>> rows = rows(Samples.season(), Phrases.english(Display.US));
    assertThat(rows.get(1).get(rows.get(0).indexOf("Outer chamber oil, left (fl oz)")))
        .isEqualTo("11.328");
  }

  @Test
  void aNotebookWithoutSessionsIsAHeadLine() {
    Notebook season = Samples.season();
    Timeline timeline = SampleCards.timeline(season);
    String text = SessionsCsv.of(season.shelf(), timeline, SampleCards.phrases(season), List.of());
    assertThat(parsed(text)).hasSize(1);
  }
}
