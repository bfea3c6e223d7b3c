package rutbook.edit;

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
      Bike next = required(notebook, bike).with(sheet);
      return Notebook.of(
          notebook.id(),
          notebook.shelf().with(next),
          notebook.entries().stream()
              .map(entry -> entry.bike().equals(bike) ? NewSettings.unknownIn(entry, next) : entry)
              .toList(),
          notebook.ruleChanges(),
          notebook.display());
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

  private static Bike required(Notebook notebook, BikeId id) {
    return notebook
        .shelf()
        .bike(id)
        .orElseThrow(() -> new NotebookException(Fault.UNKNOWN_ID, "bike", id));
  }
}
