package rutbook.ui.bike;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import rutbook.edit.Edit;
import rutbook.edit.SessionStart;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Sheet;
import rutbook.ui.Desk;
import rutbook.words.BikeWords;

/** What the sections of the Bike page share: the desk, the words, and what is shown just now. */
final class BikeDesk {
  private final Desk desk;
  private final Consumer<LocalDate> showSheet;
  private final Runnable newBike;
  private BikeModel model;
  private BikeWords words;

  /**
   * @param showSheet shows the sheet that began on a day
   * @param newBike begins the guided start of another bike
   */
  BikeDesk(Desk desk, Consumer<LocalDate> showSheet, Runnable newBike) {
    this.desk = desk;
    this.showSheet = showSheet;
    this.newBike = newBike;
    this.words = new BikeWords(desk.phrases());
  }

  void show(BikeModel shown) {
    words = new BikeWords(desk.phrases());
    model = shown;
  }

  Desk desk() {
    return desk;
  }

  BikeWords words() {
    return words;
  }

  String text(String key, Object... facts) {
    return words.text(key, facts);
  }

  void showSheet(LocalDate from) {
    showSheet.accept(from);
  }

  void newBike() {
    newBike.run();
  }

  BikeModel model() {
    return model;
  }

  /** The sheet put right, or a new one; the sentence of what stands in the way, if anything. */
  Optional<String> put(Sheet sheet) {
    return make(new ShelfEdit.PutSheet(model.bike().id(), sheet));
  }

  /** Why no sheet can begin on a day after the one shown; empty when one can. */
  Optional<String> refusalOfNewSheet(LocalDate day) {
    LocalDate before = model.sheet().from();
    if (!day.isAfter(before)) {
      return Optional.of(words.text("which.too.early", before));
    }
    return model.bike().sheets().stream().anyMatch(each -> each.from().equals(day))
        ? Optional.of(words.text("which.taken", day))
        : Optional.empty();
  }

  /** The place after everything else of the bike on a day. */
  int orderOn(LocalDate day) {
    return SessionStart.orderOn(desk.notebook(), model.bike(), day);
  }

  /** Makes an edit as a step of its own; the sentence of what stands in the way, if anything. */
  Optional<String> make(Edit edit) {
    desk.editor().closeStep();
    Optional<String> refused = desk.make(edit).map(this::sentence);
    desk.editor().closeStep();
    return refused;
  }

  /** A fault of an entry names the entry by what it is and its day, not by its place in a file. */
  private String sentence(NotebookException fault) {
    String what = words.fault(fault);
    return entry(fault.where())
        .map(
            entry ->
                words.text(
                    "refused.entry",
                    desk.text("kind." + entry.getClass().getSimpleName()),
                    entry.day(),
                    what))
        .orElse(what);
  }

  private Optional<Entry> entry(String where) {
    String[] steps = where.split("/");
    return steps.length > 1 && steps[0].equals("entries")
        ? desk.notebook().entry(new EntryId(steps[1]))
        : Optional.empty();
  }
}
