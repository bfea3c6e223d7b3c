package rutbook.fuzz;

import java.util.Optional;
import rutbook.edit.Edit;
import rutbook.edit.History;
import rutbook.imports.CsvText;
import rutbook.imports.Grid;
import rutbook.imports.ImportException;
import rutbook.imports.LapGuess;
import rutbook.imports.LapImport;
import rutbook.imports.SetupGuess;
import rutbook.imports.SetupImport;
import rutbook.imports.SetupTaking;
import rutbook.notebook.Bench;
import rutbook.notebook.Lap;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;

/** Any bytes as a table of laps and as one of setups: rows that a notebook takes, or a fault. */
public final class TableFuzz {
  private static final Notebook NOTEBOOK = Bench.notebook();

  private TableFuzz() {}

  public static void fuzzerTestOneInput(byte[] bytes) {
    Grid grid;
    try {
      grid = CsvText.read(bytes);
    } catch (ImportException refused) {
      return;
    }
    laps(grid);
    setups(grid);
  }

  private static void laps(Grid grid) {
    try {
      LapImport.of(grid, LapGuess.of(grid), LapImport.Wanted.ALL)
          .rows()
          .forEach(row -> Lap.of(row.millis()));
    } catch (ImportException refused) {
      Sentences.require(refused.getMessage());
    }
  }

  private static void setups(Grid grid) {
    int[] ids = {0};
    SetupImport.Wanted wanted =
        new SetupImport.Wanted(
            NOTEBOOK.shelf().riders().get(0), Optional.of(NOTEBOOK.shelf().tracks().get(0)));
    try {
      SetupImport taken =
          SetupTaking.of(
              NOTEBOOK,
              Bench.BIKE,
              grid,
              SetupGuess.of(grid, Bench.sheet()),
              wanted,
              () -> "fuzz-" + ids[0]++);
      History history = History.of(NOTEBOOK);
      for (Edit edit : taken.edits()) {
        history = history.after(edit);
      }
    } catch (ImportException | NotebookException refused) {
      Sentences.require(refused.getMessage());
    }
  }
}
