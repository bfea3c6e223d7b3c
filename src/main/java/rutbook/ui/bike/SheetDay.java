package rutbook.ui.bike;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import javafx.scene.layout.VBox;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.BikeId;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;

/**
 * A sheet put on another day, or taken out of the bike. What falls outside then is listed in the
 * history; where an entry needs the sheet as it is, it is refused with a sentence.
 */
final class SheetDay extends VBox {
  private final BikeDesk desk;
  private final Sheet sheet;
  private final Runnable close;
  private final AskText<LocalDate> day;

  SheetDay(BikeDesk desk, Sheet sheet, Runnable close) {
    super(8);
    this.desk = desk;
    this.sheet = sheet;
    this.close = close;
    setId("sheet-day-form");
    getStyleClass().add("wash");
    day = new Fields(desk).day("sheet-day", "sheet.day", sheet.from());
    getChildren()
        .addAll(
            Keys.prose(desk.text("sheet.day.hint"), "soft"),
            day,
            Rows.keys(
                Keys.key("sheet-move", desk.text("sheet.move"), this::move),
                Keys.key("sheet-out", desk.text("sheet.out"), this::takeOut)));
  }

  private BikeId bike() {
    return desk.model().bike().id();
  }

  private void move() {
    try {
      LocalDate to = day.read();
      if (desk.model().bike().sheets().stream().anyMatch(each -> each.from().equals(to))) {
        day.refuse(desk.text("sheet.day.taken", to));
        return;
      }
      done(desk.make(new ShelfEdit.MoveSheet(bike(), sheet.from(), to)));
    } catch (DateTimeException none) {
      day.refuse(desk.text("bad.day", desk.desk().today().toString()));
    }
  }

  private void takeOut() {
    if (desk.model().bike().sheets().size() == 1) {
      day.refuse(desk.text("sheet.only"));
      return;
    }
    done(desk.make(new ShelfEdit.TakeOutSheet(bike(), sheet.from())));
  }

  private void done(Optional<String> refused) {
    refused.ifPresentOrElse(day::refuse, close);
  }
}
