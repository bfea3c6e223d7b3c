package rutbook.ui.bike;

import java.time.LocalDate;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;

/** A new sheet, like the newest, from a day on: what is fitted then is changed on it afterwards. */
final class NewSheetForm extends Form {
  private final AskText<LocalDate> from;
  private final AskText<String> reason;

  NewSheetForm(BikeDesk desk, Runnable close) {
    super(desk, "new-sheet-form", desk.text("sheet.new"), close);
    say(Keys.prose(desk.text("sheet.new.hint"), "soft"));
    from = wide(fields().day("new-sheet-from", "which.from", desk.desk().today()));
    reason = wide(fields().text("new-sheet-reason", "which.reason", ""));
    reason.example(desk.text("which.reason.VALVING"));
  }

  @Override
  void save() {
    LocalDate day = take(from);
    desk()
        .refusalOfNewSheet(day)
        .ifPresent(
            sentence -> {
              throw new Refused(from, sentence);
            });
    Sheet next = blame(reason, () -> desk().model().sheet().with(day, take(reason)));
    desk().put(next).ifPresentOrElse(this::refuse, this::close);
  }
}
