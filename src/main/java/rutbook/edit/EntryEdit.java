package rutbook.edit;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Fault;
import rutbook.notebook.Head;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.units.Amount;

/** Edits of entries as such: added, replaced, removed, moved, noted. */
public sealed interface EntryEdit extends Edit {
  /** Anything that happened: a session, a baseline, sag, an event, advice ... */
  record Add(Entry entry) implements EntryEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      if (notebook.entry(entry.id()).isPresent()) {
        throw new NotebookException(Fault.TWICE, "entry", entry.id());
      }
      return notebook.with(entry);
    }
  }

  /** An entry put right under the same id, for kinds that are entered in one form. */
  record Correct(Entry entry) implements EntryEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      required(notebook, entry.id());
      return notebook.with(entry);
    }

    @Override
    public Optional<Object> mergeKey() {
      return Optional.of(entry.id());
    }
  }

  record Remove(EntryId entry) implements EntryEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      required(notebook, entry);
      return notebook.without(entry);
    }
  }

  /** To another day, or another place within its day. */
  record Move(EntryId entry, LocalDate day, int order) implements EntryEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return withHead(notebook, entry, head -> head.on(day, order));
    }
  }

  record Note(EntryId entry, String note) implements EntryEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return withHead(notebook, entry, head -> head.withNote(note));
    }

    @Override
    public Optional<Object> mergeKey() {
      return Optional.of(entry);
    }
  }

  /** What the hour meter read. */
  record ReadMeter(EntryId entry, Optional<Amount> meter) implements EntryEdit {
    @Override
    public Notebook applyTo(Notebook notebook) {
      return withHead(notebook, entry, head -> head.withMeter(meter));
    }

    @Override
    public Optional<Object> mergeKey() {
      return Optional.of(entry);
    }
  }

  private static Notebook withHead(Notebook notebook, EntryId id, UnaryOperator<Head> change) {
    Entry entry = required(notebook, id);
    return notebook.with(entry.with(change.apply(entry.head())));
  }

  private static Entry required(Notebook notebook, EntryId id) {
    return notebook
        .entry(id)
        .orElseThrow(() -> new NotebookException(Fault.UNKNOWN_ID, "entry", id));
  }

  /** The entry of a kind, or a fault that names it. */
  static <T extends Entry> T entry(Notebook notebook, EntryId id, Class<T> kind) {
    Entry entry = required(notebook, id);
    if (!kind.isInstance(entry)) {
      throw new NotebookException(Fault.UNKNOWN_ID, "entry", id);
    }
    return kind.cast(entry);
  }
}
