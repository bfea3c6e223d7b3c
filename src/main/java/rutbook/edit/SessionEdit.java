package rutbook.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Conditions;
import rutbook.notebook.EndOfDayCheck;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Fault;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Placed;
import rutbook.notebook.RiderId;
import rutbook.notebook.TrackId;

/** Edits of a session as a whole; those of one moto are {@link MotoEdit}s. */
public sealed interface SessionEdit extends Edit {
  EntryId session();

  /** The session after the edit. */
  Entry.Session applyTo(Entry.Session session);

  @Override
  default Notebook applyTo(Notebook notebook) {
    return notebook.with(applyTo(EntryEdit.entry(notebook, session(), Entry.Session.class)));
  }

  /** One setting as the day started with it. */
  record StartWith(EntryId session, Placed placed) implements SessionEdit {
    @Override
    public Entry.Session applyTo(Entry.Session before) {
      return before.withStart(before.start().with(placed));
    }

    @Override
    public Optional<Object> mergeKey() {
      return Optional.of(List.of(session, placed.setting()));
    }
  }

  record Describe(EntryId session, Conditions conditions) implements SessionEdit {
    @Override
    public Entry.Session applyTo(Entry.Session before) {
      return before.withConditions(conditions);
    }
  }

  /** Where and who. */
  record At(EntryId session, TrackId track, RiderId rider) implements SessionEdit {
    @Override
    public Entry.Session applyTo(Entry.Session before) {
      return before.at(track, rider);
    }
  }

  record AddMoto(EntryId session, Moto moto) implements SessionEdit {
    @Override
    public Entry.Session applyTo(Entry.Session before) {
      List<Moto> next = new ArrayList<>(before.motos());
      next.add(moto);
      return before.withMotos(next);
    }
  }

  record RemoveMoto(EntryId session, MotoId moto) implements SessionEdit {
    @Override
    public Entry.Session applyTo(Entry.Session before) {
      if (before.moto(moto).isEmpty()) {
        throw new NotebookException(Fault.UNKNOWN_ID, "moto", moto);
      }
      return before.withMotos(
          before.motos().stream().filter(each -> !each.id().equals(moto)).toList());
    }
  }

  /** What was counted on the bike after riding, or that it was not. */
  record CheckEndOfDay(EntryId session, Optional<EndOfDayCheck> check) implements SessionEdit {
    @Override
    public Entry.Session applyTo(Entry.Session before) {
      return before.withCheck(check);
    }
  }
}
