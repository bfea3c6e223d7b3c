package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.edit.Edit;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.Bike;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.AskText;

/** What the bike is called, and why this sheet began. */
final class HeadForm extends Form {
  private final AskText<String> name;
  private final AskText<String> reason;

  HeadForm(BikeDesk desk, Runnable close) {
    super(desk, "head-form", desk.text("head.form"), close);
    name = wide(fields().line("head-name", "start.name", desk.model().bike().name()));
    reason = wide(fields().line("head-reason", "which.reason", desk.model().sheet().reason()));
  }

  @Override
  void save() {
    Bike bike = desk().model().bike();
    Sheet sheet = desk().model().sheet();
    Bike named = blame(name, () -> bike.named(take(name)));
    Sheet next = blame(reason, () -> sheet.with(sheet.from(), take(reason)));
    List<Edit> edits = new ArrayList<>();
    if (!named.equals(bike)) {
      edits.add(new ShelfEdit.RenameBike(bike.id(), named.name()));
    }
    if (!next.equals(sheet)) {
      edits.add(new ShelfEdit.PutSheet(bike.id(), next));
    }
    Optional<String> refused =
        edits.isEmpty()
            ? Optional.empty()
            : desk().make(edits.size() == 1 ? edits.get(0) : new Edit.Together(edits));
    refused.ifPresentOrElse(this::refuse, this::close);
  }
}
