package rutbook.app;

import java.util.Optional;
import java.util.function.Consumer;
import rutbook.edit.History;
import rutbook.file.Autosaver;
import rutbook.file.FileFault;
import rutbook.file.NotebookFile;
import rutbook.file.Outcome;
import rutbook.file.SaveState;
import rutbook.file.Saved;
import rutbook.notebook.Notebook;

/** The notebook that is open with its file: what changes is saved, what was opened is not. */
final class OpenNotebook {
  private final NotebookFile file;
  private final Autosaver<Notebook> saver;
  private Notebook told;

  OpenNotebook(
      NotebookFile file,
      Notebook notebook,
      Codec codec,
      Autosaver.Means means,
      Consumer<SaveState> state) {
    this.file = file;
    this.told = notebook;
    this.saver = new Autosaver<>(codec.write(), file::save, means, state);
  }

  NotebookFile file() {
    return file;
  }

  Notebook notebook() {
    return told;
  }

  SaveState state() {
    return saver.state();
  }

  /** Called with every change of the editor. */
  void changed(History history) {
    if (history.present() != told) {
      told = history.present();
      saver.changed(told);
    }
  }

  /** Saves what is not saved; the fault when it cannot be. */
  Optional<FileFault> flush() {
    return saver.flush() instanceof SaveState.Failed failed
        ? Optional.of(failed.fault())
        : Optional.empty();
  }

  void retry() {
    saver.retry();
  }

  /** The file is gone and the rider wants it back. */
  void putBack() {
    saver.goOnWith(
        bytes -> {
          Outcome<Saved> saved = file.putBack(bytes);
          if (saved.result().isPresent()) {
            saver.goOnWith(file::save);
          }
          return saved;
        });
  }

  /** Lets go of the file; what is not saved by now is given up. */
  void close() {
    saver.abandon();
    file.close();
  }
}
