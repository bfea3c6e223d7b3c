package rutbook.ui.bike;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rutbook.edit.Edit;
import rutbook.edit.EntryEdit;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Role;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;

/**
 * A new sheet, like the one shown, from a day on, with the springs that were fitted then; what else
 * was fitted is changed on it afterwards.
 */
final class NewSheetForm extends Form {
  private final AskText<LocalDate> from;
  private final AskText<String> reason;
  private final List<Legs> springs;

  NewSheetForm(BikeDesk desk, Runnable close) {
    super(desk, "new-sheet-form", desk.text("sheet.new"), close);
    say(Keys.prose(desk.text("sheet.new.hint"), "soft"));
    from = wide(fields().day("new-sheet-from", "which.from", desk.desk().today()));
    reason = wide(fields().line("new-sheet-reason", "which.reason", ""));
    reason.example(desk.text("which.reason.VALVING"));
    springs =
        desk.model().isLatest()
            ? Stream.of(Role.FORK_SPRING, Role.SHOCK_SPRING)
                .flatMap(role -> desk.model().sheet().settings(role).stream())
                .map(spring -> new Legs(this, spring, desk.model().now(spring)))
                .toList()
            : List.of();
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
    List<Change> fitted = new ArrayList<>();
    for (Legs spring : springs) {
      spring.read(next).ifPresent(to -> fitted.add(Change.of(spring.setting().id(), to)));
    }
    Edit put = new ShelfEdit.PutSheet(desk().model().bike().id(), next);
    Edit edit =
        fitted.isEmpty()
            ? put
            : new Edit.Together(List.of(put, new EntryEdit.Add(fitted(day, fitted))));
    desk().make(edit).ifPresentOrElse(this::refuse, this::close);
  }

  /** After whatever else is noted of that day. */
  private Entry.Adjusted fitted(LocalDate day, List<Change> changes) {
    Head head =
        Head.of(
            new EntryId(desk().desk().ids().next()),
            desk().model().bike().id(),
            day,
            desk().orderOn(day));
    return new Entry.Adjusted(head, changes);
  }
}
