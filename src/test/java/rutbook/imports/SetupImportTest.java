package rutbook.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import rutbook.edit.Editor;
import rutbook.imports.NotTaken.Why;
import rutbook.notebook.Bench;
import rutbook.notebook.Entry;
import rutbook.notebook.Fault;
import rutbook.notebook.How;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Reading;
import rutbook.notebook.Rider;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.units.AmountException;

/** Setups of a spreadsheet, row by row. */
class SetupImportTest {
  private static final Sheet SHEET = Bench.sheet();
  private static final Notebook NOTEBOOK = Bench.notebook();

  private static Grid grid(String text) {
    return CsvText.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static SetupImport taken(Grid grid, SetupMapping mapping) {
    return taken(NOTEBOOK, grid, mapping);
  }

  private static SetupImport taken(Notebook notebook, Grid grid, SetupMapping mapping) {
    AtomicInteger ids = new AtomicInteger();
    Rider rider = notebook.shelf().riders().get(0);
    return SetupTaking.of(
        notebook,
        Bench.BIKE,
        grid,
        mapping,
        new SetupImport.Wanted(rider, Optional.of(notebook.shelf().tracks().get(0))),
        () -> "i" + ids.incrementAndGet());
  }

  private static final String SPREADSHEET =
      """
      Date;Track;Fork comp L;Fork comp R;Fork reb;Fork oil (ml);Remarks
      16.05.2026;Hollow Hill;12;13;11 out;335;dry, hard
      17.05.2026;New Moor;14;14;soft;340;
      18.05.2026;;30;;10;;
      someday;Hollow Hill;12;12;11;335;
      01.01.2019;Hollow Hill;12;12;11;335;
      19.05.2026;Hollow Hill;;;;;only a note
      """;

  @Test
  void columnsAreFoundByHeadingAndValues() {
    SetupMapping mapping = SetupGuess.of(grid(SPREADSHEET), SHEET);
    assertThat(mapping.text())
        .isEqualTo(
            "day=1,track=2,fork-compression:left=3,fork-compression:right=4,fork-rebound=5,"
                + "fork-oil=6,note=7,order=day-first,decimals=point");
  }

  @Test
  void everyRowIsTakenOrTold() {
    Grid grid = grid(SPREADSHEET);
    SetupImport found = taken(grid, SetupGuess.of(grid, SHEET));
    assertThat(found.rows()).extracting(SetupImport.Row::line).containsExactly(2, 3, 4);
    assertThat(found.notTaken())
        .extracting(NotTaken::line, NotTaken::why)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(3, Why.BAD_READING),
            org.assertj.core.groups.Tuple.tuple(5, Why.BAD_DAY),
            org.assertj.core.groups.Tuple.tuple(6, Why.NO_SHEET),
            org.assertj.core.groups.Tuple.tuple(7, Why.NO_READING));
    NotTaken soft = found.notTaken().get(0);
    assertThat(soft.of()).isEqualTo("Fork rebound");
    assertThat(soft.because().orElseThrow()).isInstanceOf(AmountException.class);
  }

  @Test
  void whatIsBeyondALimitIsKeptAsFoundAndTold() {
    Grid grid = grid(SPREADSHEET);
    SetupImport.Row third = taken(grid, SetupGuess.of(grid, SHEET)).rows().get(2);
    assertThat(third.setup().placed(Bench.FORK_COMPRESSION).orElseThrow().how())
        .isEqualTo(How.FOUND);
    assertThat(third.beyond())
        .extracting(NotebookException::fault)
        .containsExactly(Fault.ABOVE_MOST);
    assertThat(third.setup().placed(Bench.FORK_REBOUND).orElseThrow().how()).isEqualTo(How.SET);
  }

  @Test
  void aSettingThatARowDoesNotNameIsAsItWasBefore() {
    Grid grid = grid(SPREADSHEET);
    List<SetupImport.Row> rows = taken(grid, SetupGuess.of(grid, SHEET)).rows();
    assertThat(rows.get(0).setup().reading(Bench.FORK_COMPRESSION))
        .contains(Reading.of(Bench.clicks(12), Bench.clicks(13)));
    assertThat(rows.get(2).setup().reading(Bench.FORK_COMPRESSION))
        .as("the right leg was not written")
        .contains(Reading.of(Bench.clicks(30), Bench.clicks(14)));
    assertThat(rows.get(2).setup().reading(Bench.FORK_OIL))
        .contains(Reading.bothLegs(Bench.ml("340")));
    assertThat(rows.get(0).setup().reading(Bench.SHOCK_REBOUND))
        .isEqualTo(Bench.setup().reading(Bench.SHOCK_REBOUND));
  }

  @Test
  void aTrackIsTheOneOfThatNameOrANewOne() {
    Grid grid = grid(SPREADSHEET);
    List<SetupImport.Row> rows = taken(grid, SetupGuess.of(grid, SHEET)).rows();
    assertThat(rows.get(1).track().name()).isEqualTo("New Moor");
    assertThat(NOTEBOOK.shelf().tracks()).doesNotContain(rows.get(1).track());
    assertThat(rows.get(2).track())
        .as("the chosen one")
        .isEqualTo(NOTEBOOK.shelf().tracks().get(0));
  }

  @Test
  void allOfItIsOneStepBackAndIsNotTakenTwice() {
    Grid grid = grid(SPREADSHEET);
    SetupMapping mapping = SetupGuess.of(grid, SHEET);
    Editor editor = new Editor(NOTEBOOK);
    editor.make(taken(grid, mapping).edit().orElseThrow());
    assertThat(Timeline.of(editor.present(), Bench.BIKE).sessions()).hasSize(3);
    Entry.Session first = Timeline.of(editor.present(), Bench.BIKE).sessions().get(0);
    assertThat(first.day()).isEqualTo(LocalDate.of(2026, 5, 16));
    assertThat(first.head().note()).isEqualTo("dry, hard");
    SetupImport again = taken(editor.present(), grid, mapping);
    assertThat(again.rows()).isEmpty();
    assertThat(again.edit()).isEmpty();
    assertThat(again.notTaken()).filteredOn(each -> each.why() == Why.ALREADY_THERE).hasSize(3);
    editor.undo();
    assertThat(editor.present()).isEqualTo(NOTEBOOK);
  }

  @Test
  void theOrderOfDaysIsAskedWhereNothingSettlesIt() {
    Grid grid = grid("Date,Fork rebound\n03/05/2026,11\n04/05/2026,12\n");
    SetupMapping mapping = SetupGuess.of(grid, SHEET);
    assertThat(SetupImport.asksOrder(grid, mapping)).isTrue();
    assertThat(taken(grid, mapping).notTaken())
        .as("nothing is guessed")
        .extracting(NotTaken::why)
        .containsOnly(Why.BAD_DAY);
    assertThat(taken(grid, mapping.with(DayOrder.MONTH_FIRST)).rows())
        .extracting(SetupImport.Row::day)
        .containsExactly(LocalDate.of(2026, 3, 5), LocalDate.of(2026, 4, 5));
  }

  @Test
  void aTableWithItsSettingsAtTheLeftIsTurned() {
    Grid grid =
        grid(
            "Setting,3 May 2026,10 May 2026\nFork compression,12,14\nFork rebound,11,11\n"
                + "Shock rebound,12,12\n");
    assertThat(SetupGuess.isTurned(grid, SHEET)).isTrue();
    Grid turned = grid.turned();
    assertThat(taken(turned, SetupGuess.of(turned, SHEET)).rows()).hasSize(2);
    assertThat(SetupGuess.isTurned(grid(SPREADSHEET), SHEET)).isFalse();
  }

  @Test
  void aDecimalCommaIsReadWhereTheFileHasIt() {
    Grid grid = grid("Date;Tyre front (bar)\n2026-05-03;0,95\n2026-05-10;1,0\n");
    SetupMapping mapping = SetupGuess.of(grid, SHEET);
    assertThat(mapping.decimals()).isEqualTo(DecimalMark.COMMA);
    assertThat(taken(grid, mapping).rows().get(0).setup().reading(Bench.TYRE_FRONT).orElseThrow())
        .isEqualTo(Reading.of(rutbook.units.Amount.of("0.95", rutbook.units.Pressure.BAR)));
  }

  @Test
  void aMappingIsReadAsItIsWritten() {
    Grid grid = grid(SPREADSHEET);
    SetupMapping mapping = SetupGuess.of(grid, SHEET).with(6, new SetupColumn.Meter());
    assertThat(SetupMapping.of(mapping.text(), grid, SHEET)).isEqualTo(mapping);
  }
}
