package rutbook.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Dice;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Notebooks;

/** What holds for any edits in any order, of every kind that there is. */
class RandomEditsTest {
  private static final int EDITS = 30;

  /** An edit that the notebook takes; refused ones leave it as it is. */
  private static Optional<History> after(History history, Edit edit) {
    try {
      return Optional.of(history.after(edit));
    } catch (NotebookException refused) {
      return Optional.empty();
    }
  }

  private static Optional<Edit> any(Dice dice, Notebook notebook) {
    boolean ridden = notebook.entries().stream().anyMatch(Entry.Session.class::isInstance);
    return ridden ? Optional.of(new RandomEdits(dice, notebook).any()) : Optional.empty();
  }

  @Test
  void everyKindOfEditIsTakenByTheRandomNotebooks() {
    Set<Class<?>> taken = new HashSet<>();
    for (int seed = 0; seed < 30; seed++) {
      Notebook notebook = Notebooks.of(seed, 20);
      RandomEdits edits = new RandomEdits(new Dice(new Random(seed)), notebook);
      RandomEdits.kinds(Edit.class)
          .forEach(
              kind -> {
                Edit edit = edits.of(kind);
                History start = History.of(notebook);
                after(start, edit).filter(next -> next != start).ifPresent(next -> taken.add(kind));
              });
    }
    assertThat(taken).containsExactlyInAnyOrderElementsOf(RandomEdits.kinds(Edit.class).toList());
  }

  @Property(tries = 60, seed = "41")
  void anyEditsAreUndoneToTheStartAndRedoneToTheEnd(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    undoneAndRedone(notebook, new Dice(new Random(seed)), EDITS);
  }

  @Tag("long")
  @Property(tries = 500, seed = "42")
  void anyEditsAreUndoneToTheStartAndRedoneToTheEndAtLength(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    undoneAndRedone(notebook, new Dice(new Random(seed)), 5 * EDITS);
  }

  private static void undoneAndRedone(Notebook start, Dice dice, int edits) {
    Deque<Notebook> seen = new ArrayDeque<>();
    History history = History.of(start);
    for (int i = 0; i < edits; i++) {
      Optional<Edit> edit = any(dice, history.present());
      Optional<History> next = edit.isPresent() ? after(history, edit.get()) : Optional.empty();
      if (next.isPresent() && next.get() != history) {
        boolean step = next.get().behind().size() > history.behind().size();
        if (step) {
          seen.push(history.present());
        } else if (next.get().behind().size() < history.behind().size()) {
          seen.pop();
        }
        history = dice.once(4) ? next.get().sealedOff() : next.get();
      }
    }
    assertThat(history.behind()).hasSameSizeAs(seen);
    Notebook end = history.present();
    int steps = 0;
    while (history.undoable().isPresent()) {
      Notebook before = history.present();
      history = history.undone();
      assertThat(history.present()).isEqualTo(seen.pop()).isNotEqualTo(before);
      steps++;
    }
    assertThat(history.present()).isEqualTo(start);
    for (int i = 0; i < steps; i++) {
      history = history.redone();
    }
    assertThat(history.present()).isEqualTo(end);
    assertThat(history.redoable()).isEmpty();
  }

  @Property(tries = 60, seed = "43")
  void whateverIsEditedIsStillANotebook(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    stillANotebook(notebook, new Dice(new Random(seed)), EDITS);
  }

  @Tag("long")
  @Property(tries = 500, seed = "44")
  void whateverIsEditedIsStillANotebookAtLength(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    stillANotebook(notebook, new Dice(new Random(seed)), 5 * EDITS);
  }

  /** Checked as a whole, as when its file is opened again: with it, every limit of its sheets. */
  private static void stillANotebook(Notebook start, Dice dice, int edits) {
    History history = History.of(start);
    for (int i = 0; i < edits; i++) {
      Optional<Edit> edit = any(dice, history.present());
      Optional<History> next = edit.isPresent() ? after(history, edit.get()) : Optional.empty();
      if (next.isPresent()) {
        history = next.get();
        Notebook now = history.present();
        assertThatCode(
                () ->
                    Notebook.of(
                        now.id(), now.shelf(), now.entries(), now.ruleChanges(), now.display()))
            .as("%s", edit)
            .doesNotThrowAnyException();
      }
    }
  }
}
