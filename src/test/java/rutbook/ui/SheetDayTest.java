package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.Bike;
import rutbook.notebook.Notebook;
import rutbook.notebook.Sheet;
import rutbook.samples.Samples;
import rutbook.ui.controls.RowKey;

/** A sheet on a wrong day, or one that never was, put right in the bike's history. */
class SheetDayTest extends WindowTest {
  private static final Notebook SEASON = Samples.season();
  private static final Bike BIKE = SEASON.bikes().get(0);
  private static final LocalDate LATER = TODAY.plusYears(1);
  private static final Notebook TWO =
      new ShelfEdit.PutSheet(BIKE.id(), BIKE.latestSheet().with(LATER, "a sheet too many"))
          .applyTo(SEASON);

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.of(TWO);
  }

  private void openSheet(LocalDate from) {
    go(new Place.Bike(Place.BikePart.HISTORY));
    interact(() -> ((RowKey) node("history-sheet-" + from)).fire());
    settle();
  }

  private List<LocalDate> days() {
    return editor.present().shelf().bike(BIKE.id()).orElseThrow().sheets().stream()
        .map(Sheet::from)
        .toList();
  }

  @Test
  void aSheetIsPutOnAnotherDayInOneStep() {
    openSheet(LATER);
    type("sheet-day", LATER.plusDays(3).toString());
    touch("sheet-move");
    assertThat(days()).contains(LATER.plusDays(3)).doesNotContain(LATER);
    interact(editor::undo);
    assertThat(editor.present()).isEqualTo(TWO);
  }

  @Test
  void aSheetThatNeverWasIsTakenOut() {
    openSheet(LATER);
    touch("sheet-out");
    assertThat(editor.present().shelf().bike(BIKE.id()).orElseThrow().sheets())
        .isEqualTo(BIKE.sheets());
  }

  @Test
  void whereEntriesNeedItItIsRefusedWithASentenceAndNothingChanges() {
    LocalDate first = BIKE.sheets().get(0).from();
    openSheet(first);
    touch("sheet-out");
    assertThat(text("sheet-day-error")).isNotBlank();
    type("sheet-day", TODAY.plusMonths(2).toString());
    touch("sheet-move");
    assertThat(text("sheet-day-error")).isNotBlank();
    type("sheet-day", LATER.toString());
    touch("sheet-move");
    assertThat(text("sheet-day-error")).contains("already");
    type("sheet-day", "soon");
    touch("sheet-move");
    assertThat(text("sheet-day-error")).contains("year-month-day");
    assertThat(editor.present()).isEqualTo(TWO);
  }
}
