package rutbook.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Fault;
import rutbook.notebook.Feel;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.SettingId;
import rutbook.notebook.TravelUsed;

/** Edits of one moto: what was changed before it and what the rider came back with. */
public sealed interface MotoEdit extends Edit {
  EntryId session();

  MotoId moto();

  /** The moto after the edit. */
  Moto applyTo(Moto moto);

  @Override
  default Notebook applyTo(Notebook notebook) {
    Entry.Session before = EntryEdit.entry(notebook, session(), Entry.Session.class);
    if (before.moto(moto()).isEmpty()) {
      throw new NotebookException(Fault.UNKNOWN_ID, "moto", moto());
    }
    List<Moto> next =
        before.motos().stream()
            .map(each -> each.id().equals(moto()) ? applyTo(each) : each)
            .toList();
    return notebook.with(before.withMotos(next));
  }

  /** A setting moved before the moto, to an absolute target inside its limits. */
  record ChangeSetting(EntryId session, MotoId moto, Change change) implements MotoEdit {
    @Override
    public Moto applyTo(Moto before) {
      List<Change> next = new ArrayList<>(before.changes());
      for (int i = 0; i < next.size(); i++) {
        if (next.get(i).setting().equals(change.setting())) {
          next.set(i, change);
          return before.withChanges(next);
        }
      }
      next.add(change);
      return before.withChanges(next);
    }

    @Override
    public Optional<Object> mergeKey() {
      return Optional.of(List.of(session, moto, change.setting()));
    }
  }

  /** That setting was not moved before the moto after all. */
  record LeaveSetting(EntryId session, MotoId moto, SettingId setting) implements MotoEdit {
    @Override
    public Moto applyTo(Moto before) {
      return before.withChanges(
          before.changes().stream().filter(each -> !each.setting().equals(setting)).toList());
    }
  }

  /** What the bike did; a feel of the same end, section and symptom is replaced. */
  record NoteFeel(EntryId session, MotoId moto, Feel feel) implements MotoEdit {
    @Override
    public Moto applyTo(Moto before) {
      return before.withReport(before.report().with(feel));
    }
  }

  /** Back to not mentioned, which is unknown and not the same as 0. */
  record ForgetFeel(EntryId session, MotoId moto, Feel.Key feel) implements MotoEdit {
    @Override
    public Moto applyTo(Moto before) {
      return before.withReport(before.report().without(feel));
    }
  }

  record Trust(EntryId session, MotoId moto, OptionalInt trust) implements MotoEdit {
    @Override
    public Moto applyTo(Moto before) {
      return before.withReport(before.report().withTrust(trust));
    }
  }

  record Laps(EntryId session, MotoId moto, List<Lap> laps) implements MotoEdit {
    public Laps {
      laps = List.copyOf(laps);
    }

    @Override
    public Moto applyTo(Moto before) {
      return before.withReport(before.report().withLaps(laps));
    }

    @Override
    public Optional<Object> mergeKey() {
      return Optional.of(List.of(session, moto, "laps"));
    }
  }

  record Travel(EntryId session, MotoId moto, TravelUsed travel) implements MotoEdit {
    @Override
    public Moto applyTo(Moto before) {
      return before.withReport(before.report().withTravel(travel));
    }
  }

  /** Whether the moto is to weigh less: cold, tired, held up. */
  record Mark(EntryId session, MotoId moto, boolean doubtful) implements MotoEdit {
    @Override
    public Moto applyTo(Moto before) {
      return before.withReport(before.report().marked(doubtful));
    }
  }

  /** Conditions that differ from those the session started with. */
  record Describe(EntryId session, MotoId moto, Optional<Conditions> conditions)
      implements MotoEdit {
    @Override
    public Moto applyTo(Moto before) {
      return before.withConditions(conditions);
    }
  }

  record Note(EntryId session, MotoId moto, String note) implements MotoEdit {
    @Override
    public Moto applyTo(Moto before) {
      return before.withNote(note);
    }

    @Override
    public Optional<Object> mergeKey() {
      return Optional.of(List.of(session, moto));
    }
  }
}
