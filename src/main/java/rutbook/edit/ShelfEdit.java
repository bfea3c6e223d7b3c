package rutbook.edit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Fault;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Oil;
import rutbook.notebook.Rider;
import rutbook.notebook.RuleChange;
import rutbook.notebook.Sheet;
import rutbook.notebook.Track;
import rutbook.units.Display;

/** Edits of what the notebook knows besides what happened. */
public sealed interface ShelfEdit extends Edit {
  /** A rider added, or changed under the same id. */
  record PutRider(Rider rider) implements ShelfEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return notebook.with(notebook.shelf().with(rider));
    }

    @Override
    public Optional<Object> mergeKey() {
      return Optional.of(rider.id());
    }
  }

  /** A track added, or changed under the same id. */
  record PutTrack(Track track) implements ShelfEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return notebook.with(notebook.shelf().with(track));
    }

    @Override
    public Optional<Object> mergeKey() {
      return Optional.of(track.id());
    }
  }

  /** An oil put on the shelf, or changed under the same id. */
  record PutOil(Oil oil) implements ShelfEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return notebook.with(notebook.shelf().with(oil));
    }

    @Override
    public Optional<Object> mergeKey() {
      return Optional.of(oil.id());
    }
  }

  /** A new bike with its first sheet. */
  record AddBike(Bike bike) implements ShelfEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      if (notebook.shelf().bike(bike.id()).isPresent()) {
        throw new NotebookException(Fault.TWICE, "bike", bike.id());
      }
      return notebook.with(bike);
    }
  }

  record RenameBike(BikeId bike, String name) implements ShelfEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return notebook.with(required(notebook, bike).named(name));
    }

    @Override
    public Optional<Object> mergeKey() {
      return Optional.of(bike);
    }
  }

  /**
   * A new dated sheet, or the sheet of that day changed. Older entries stay with theirs; a setting
   * that is new on the sheet is unknown in the setups noted under it.
   */
  record PutSheet(BikeId bike, Sheet sheet) implements ShelfEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return under(notebook, required(notebook, bike).with(sheet));
    }
  }

  /**
   * A sheet that began on another day than was noted. Entries between the two days are read against
   * the sheet that is in force then, and it is refused where one of them cannot be.
   */
  record MoveSheet(BikeId bike, LocalDate from, LocalDate to) implements ShelfEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      Bike before = required(notebook, bike);
      Sheet moved = before.sheetOn(from);
      if (!moved.from().equals(from)) {
        throw new NotebookException(Fault.NO_SHEET, before.name(), from);
      }
      if (before.sheets().stream().anyMatch(each -> each.from().equals(to) && each != moved)) {
        throw new NotebookException(Fault.TWICE, "sheet", to);
      }
      List<Sheet> next =
          before.sheets().stream()
              .map(each -> each == moved ? moved.with(to, moved.reason()) : each)
              .toList();
      return under(notebook, new Bike(bike, before.name(), next));
    }
  }

  /**
   * A sheet that never was: the one before it holds on, and it is refused where entries need it.
   */
  record TakeOutSheet(BikeId bike, LocalDate from) implements ShelfEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return under(notebook, required(notebook, bike).withoutSheet(from));
    }
  }

  /** The units shown; what is written stays as written. */
  record ChooseUnits(Display display) implements ShelfEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return notebook.with(display);
    }
  }

  /** The rider's own sizes of rules, all of them. */
  record ChangeRules(List<RuleChange> changes) implements ShelfEdit {
    public ChangeRules {
      changes = List.copyOf(changes);
    }

    @Override
    public Notebook applyTo(Notebook notebook) {
      return notebook.withRuleChanges(changes);
    }
  }

  /** The notebook with the bike's sheets as they are now; new settings are unknown before. */
  private static Notebook under(Notebook notebook, Bike next) {
    return Notebook.of(
        notebook.id(),
        notebook.shelf().with(next),
        notebook.entries().stream()
            .map(
                entry ->
                    entry.bike().equals(next.id()) ? NewSettings.unknownIn(entry, next) : entry)
            .toList(),
        notebook.ruleChanges(),
        notebook.display());
  }

  private static Bike required(Notebook notebook, BikeId id) {
    return notebook
        .shelf()
        .bike(id)
        .orElseThrow(() -> new NotebookException(Fault.UNKNOWN_ID, "bike", id));
  }
}
