package rutbook.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Notebook;

/**
 * The present notebook with the steps behind and ahead of it. Immutable; a step keeps the notebook
 * before it, which shares all but what changed.
 */
public record History(List<Step> behind, Notebook present, List<Step> ahead) {
  public static final int MOST_STEPS = 200;

  /** An edit with the notebook on its other side: before it when behind, after it when ahead. */
  public record Step(Edit edit, Notebook other) {}

  public History {
    behind = List.copyOf(behind);
    ahead = List.copyOf(ahead);
  }

  public static History of(Notebook notebook) {
    return new History(List.of(), notebook, List.of());
  }

  /**
   * After an edit. An edit that changes nothing is no step; one that continues the last step is
   * merged into it.
   */
  public History after(Edit edit) {
    Notebook next = edit.applyTo(present);
    if (next.equals(present)) {
      return this;
    }
    List<Step> steps = new ArrayList<>(behind);
    Optional<Step> last = undoable();
    if (last.isPresent() && ahead.isEmpty() && continues(last.get().edit(), edit)) {
      steps.remove(steps.size() - 1);
      if (!next.equals(last.get().other())) { // otherwise it is typed back to what it was
        steps.add(new Step(edit, last.get().other()));
      }
    } else {
      steps.add(new Step(edit, present));
    }
    int tooMany = Math.max(0, steps.size() - MOST_STEPS);
    return new History(steps.subList(tooMany, steps.size()), next, List.of());
  }

  private static boolean continues(Edit last, Edit edit) {
    return edit.mergeKey().isPresent()
        && last.getClass() == edit.getClass()
        && edit.mergeKey().equals(last.mergeKey());
  }

  /** A fresh start for merging: the next edit is a step of its own whatever its key. */
  public History sealedOff() {
    Optional<Step> last = undoable();
    if (last.isEmpty() || last.get().edit().mergeKey().isEmpty()) {
      return this;
    }
    List<Step> steps = new ArrayList<>(behind);
    Edit closed = new Edit.Together(List.of(last.get().edit()));
    steps.set(steps.size() - 1, new Step(closed, last.get().other()));
    return new History(steps, present, ahead);
  }

  public Optional<Step> undoable() {
    return behind.isEmpty() ? Optional.empty() : Optional.of(behind.get(behind.size() - 1));
  }

  public Optional<Step> redoable() {
    return ahead.isEmpty() ? Optional.empty() : Optional.of(ahead.get(ahead.size() - 1));
  }

  /** One step back, or the same where there is none. */
  public History undone() {
    return undoable()
        .map(
            step -> {
              List<Step> next = new ArrayList<>(ahead);
              next.add(new Step(step.edit(), present));
              return new History(behind.subList(0, behind.size() - 1), step.other(), next);
            })
        .orElse(this);
  }

  /** One step ahead again, or the same where there is none. */
  public History redone() {
    return redoable()
        .map(
            step -> {
              List<Step> next = new ArrayList<>(behind);
              next.add(new Step(step.edit(), present));
              return new History(next, step.other(), ahead.subList(0, ahead.size() - 1));
            })
        .orElse(this);
  }
}
