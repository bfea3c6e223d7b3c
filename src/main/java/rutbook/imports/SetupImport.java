package rutbook.imports;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.edit.Edit;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Rider;
import rutbook.notebook.Setup;
import rutbook.notebook.Track;

/**
 * The setups of a spreadsheet, each as the start of a session, and what of it is not taken.
 *
 * @param edits that add them all, in order; nothing is added where it is empty
 */
public record SetupImport(List<Row> rows, List<NotTaken> notTaken, List<Edit> edits) {
  /** Rows that are taken at once. */
  public static final int MOST = 1000;

  /**
   * A setup that is taken.
   *
   * @param beyond why readings of it are kept as found instead of as set
   */
  public record Row(
      int line, LocalDate day, Track track, Setup setup, List<NotebookException> beyond) {
    public Row {
      beyond = List.copyOf(beyond);
    }
  }

  /**
   * What the file does not say.
   *
   * @param track of rows that name none
   */
  public record Wanted(Rider rider, Optional<Track> track) {}

  public SetupImport {
    rows = List.copyOf(rows);
    notTaken = List.copyOf(notTaken);
    edits = List.copyOf(edits);
  }

  /** All of it as one step of undo. */
  public Optional<Edit> edit() {
    return edits.isEmpty() ? Optional.empty() : Optional.of(new Edit.Together(edits));
  }

  /** Whether the days can be read in more than one way, and nobody said which. */
  public static boolean asksOrder(Grid grid, SetupMapping mapping) {
    return mapping.order().isEmpty()
        && mapping.column(new SetupColumn.Day()).isPresent()
        && Days.needsOrder(grid.values(mapping.column(new SetupColumn.Day()).getAsInt()));
  }

  /** In the order of days, those of one day as they stand in the file. */
  static List<Dated> inOrder(List<Dated> rows) {
    List<Dated> sorted = new ArrayList<>(rows);
    sorted.sort(java.util.Comparator.comparing(Dated::day));
    return sorted;
  }

  /** A row whose day is known. */
  record Dated(Grid.Row row, LocalDate day) {}
}
