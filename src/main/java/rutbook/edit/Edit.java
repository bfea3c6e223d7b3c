package rutbook.edit;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Notebook;

/**
 * A thing the rider does: a pure function from the notebook before to the notebook after. Ids of
 * new things are carried by the edit, never made by it.
 */
public sealed interface Edit
    permits ShelfEdit, EntryEdit, SessionEdit, MotoEdit, RebuildEdit, AdviceEdit, Edit.Together {

  /**
   * The notebook after this edit.
   *
   * @throws rutbook.notebook.NotebookException when the result would break a bound; nothing is
   *     changed then
   */
  Notebook applyTo(Notebook notebook);

  /** Edits with equal keys that follow each other are one step of undo: typing is merged. */
  default Optional<Object> mergeKey() {
    return Optional.empty();
  }

  /** Several edits as one step, such as taking a proposal: all of them, or none. */
  record Together(List<Edit> edits) implements Edit {
    public Together {
      edits = List.copyOf(edits);
      if (edits.isEmpty()) {
        throw new IllegalArgumentException("nothing to do together");
      }
    }

    /** What they are about: a new bike or sheet, or the one that the others only help. */
    public Optional<Edit> lead() {
      Optional<Edit> first =
          edits.stream()
              .filter(
                  each ->
                      edits.size() == 1
                          || each instanceof ShelfEdit.AddBike
                          || each instanceof ShelfEdit.PutSheet)
              .findFirst();
      List<Edit> own = edits.stream().filter(each -> !(each instanceof ShelfEdit)).toList();
      return first.isPresent() || own.size() != 1 ? first : Optional.of(own.get(0));
    }

    @Override
    public Notebook applyTo(Notebook notebook) {
      Notebook next = notebook;
      for (Edit edit : edits) {
        next = edit.applyTo(next);
      }
      return next;
    }
  }
}
