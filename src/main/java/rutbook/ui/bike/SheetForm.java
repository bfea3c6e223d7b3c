package rutbook.ui.bike;

import java.util.Optional;
import java.util.Set;
import rutbook.notebook.Sheet;

/**
 * A form over a part of the sheet. Where what changes would change the meaning of older entries, it
 * asks which it is: this sheet put right, or a new sheet from a day.
 */
abstract class SheetForm extends Form {
  SheetForm(BikeDesk desk, String id, String title, Runnable close) {
    super(desk, id, title, close);
  }

  /** The sheet with the answers in it; throws {@link Refused} where they cannot be. */
  abstract Sheet next(Sheet sheet);

  /** The same where a new sheet begins: what has another meaning gets another id there. */
  Sheet renewed(Sheet sheet) {
    return next(sheet);
  }

  @Override
  final void save() {
    put(next(desk().model().sheet()));
  }

  /** Puts a changed sheet into the notebook, after a question where one is due. */
  final void put(Sheet next) {
    Sheet before = desk().model().sheet();
    if (next.equals(before)) {
      close();
      return;
    }
    Set<SheetChange> changes = SheetChange.between(before, next);
    if (changes.isEmpty()) {
      finish(desk().put(next));
    } else {
      WhichSheet question =
          new WhichSheet(desk(), next, changes, this::newSheet, this::finish, this::takeBack);
      instead(question);
      question.requestFocus();
    }
  }

  private Sheet newSheet(Sheet next) {
    return next.equals(next(desk().model().sheet())) ? renewed(desk().model().sheet()) : next;
  }

  private void takeBack() {
    instead(null);
  }

  private void finish(Optional<String> refused) {
    if (refused.isEmpty()) {
      close();
    } else {
      refuse(refused.get());
    }
  }
}
