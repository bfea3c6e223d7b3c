package rutbook.edit;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import rutbook.notebook.Notebook;

/**
 * Holds the present notebook and its history, on one thread, and tells listeners when they change.
 */
public final class Editor {
  private final Thread owner = Thread.currentThread();
  private final List<Consumer<History>> listeners = new CopyOnWriteArrayList<>();
  private History history;
  private boolean telling;

  /** To be used by the thread that made it alone. */
  public Editor(Notebook notebook) {
    history = History.of(notebook);
  }

  public Notebook present() {
    return history.present();
  }

  public History history() {
    return history;
  }

  /**
   * Makes an edit and tells the listeners.
   *
   * @throws rutbook.notebook.NotebookException when the edit would break a bound; nothing is
   *     changed
   * @throws IllegalStateException from inside a listener, or on another thread
   */
  public void make(Edit edit) {
    become(requireFree().after(edit));
  }

  public void undo() {
    become(requireFree().undone());
  }

  public void redo() {
    become(requireFree().redone());
  }

  /** The next edit starts a step of undo of its own, whatever came before. */
  public void closeStep() {
    history = requireFree().sealedOff();
  }

  /** Another notebook, with no history: opened, made new, or read again from the disk. */
  public void open(Notebook notebook) {
    requireFree();
    become(History.of(notebook));
  }

  /** Tells the listener of every change from now on, until the returned action is run. */
  public Runnable listen(Consumer<History> listener) {
    listeners.add(listener);
    return () -> listeners.remove(listener);
  }

  private History requireFree() {
    if (Thread.currentThread() != owner) {
      throw new IllegalStateException("the editor belongs to " + owner.getName());
    }
    if (telling) {
      throw new IllegalStateException("an edit from inside a listener");
    }
    return history;
  }

  private void become(History next) {
    if (next == history) {
      return;
    }
    history = next;
    telling = true;
    try {
      listeners.forEach(listener -> listener.accept(next));
    } finally {
      telling = false;
    }
  }
}
