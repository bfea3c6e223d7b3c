package rutbook.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import rutbook.file.Backup;
import rutbook.file.DurableFile;
import rutbook.file.FileFault;
import rutbook.file.NotebookFile;
import rutbook.file.Outcome;
import rutbook.file.Recovery;
import rutbook.file.SaveState;
import rutbook.notebook.Notebook;
import rutbook.ui.NotebookFiles.Answer;
import rutbook.ui.NotebookFiles.Way;
import rutbook.words.FileWords;
import rutbook.words.Phrases;

/** Makes an open notebook of a file, or the sentence why there is none with the ways on. */
final class Opening {
  /** What an attempt to open came to: an answer, and the notebook that takes over if it did. */
  record Result(Answer answer, Optional<OpenNotebook> next) {}

  /** Does a piece of work away from the window, and answers in it. */
  interface Background {
    void run(Consumer<Answer> answer, Supplier<Result> work);
  }

  private final DiskFiles.Means means;
  private final DurableFile durable;
  private final Phrases phrases;
  private final FileWords words;
  private final Consumer<SaveState> told;
  private final Background background;

  Opening(
      DiskFiles.Means means,
      DurableFile durable,
      Phrases phrases,
      Consumer<SaveState> told,
      Background background) {
    this.means = means;
    this.durable = durable;
    this.phrases = phrases;
    this.words = new FileWords(phrases, means.clock().getZone());
    this.told = told;
    this.background = background;
  }

  /** A notebook that is there. */
  Result open(Path path) {
    return of(path, NotebookFile.open(means.disk(), durable, path, means.clock()));
  }

  /** A new file with this notebook in it; none is replaced. */
  Result create(Path path, Notebook notebook) {
    byte[] bytes = means.codec().write().apply(notebook);
    return of(
        path,
        NotebookFile.create(
            means.disk(), durable, path, bytes, NotebookFile.IfThere.REFUSE, means.clock()));
  }

  Result of(Path path, Outcome<NotebookFile.Opened> outcome) {
    return outcome.fold(
        this::understood, fault -> new Result(faulty(path, fault), Optional.empty()));
  }

  Answer refused(FileFault fault) {
    return new Answer.Refused(words.sentence(fault), List.of());
  }

  private Result understood(NotebookFile.Opened opened) {
    try {
      Notebook notebook = means.codec().read().apply(opened.bytes());
      OpenNotebook next =
          new OpenNotebook(opened.file(), notebook, means.codec(), means.saving(), told);
      String notice = opened.unguarded().map(words::sentence).orElse("");
      return new Result(
          new Answer.Opened(notebook, opened.file().path(), notice), Optional.of(next));
    } catch (RuntimeException noNotebook) {
      Path path = opened.file().path();
      opened.file().close();
      return new Result(
          new Answer.Refused(means.codec().sentence().apply(noNotebook), backupWays(path)),
          Optional.empty());
    }
  }

  private Answer faulty(Path path, FileFault fault) {
    boolean backupHelps =
        fault instanceof FileFault.Missing || fault instanceof FileFault.Unreadable;
    return new Answer.Refused(words.sentence(fault), backupHelps ? backupWays(path) : List.of());
  }

  private List<Way> backupWays(Path path) {
    Recovery recovery = new Recovery(means.disk(), durable, path, means.clock());
    return recovery
        .newestReadable(means.codec()::isReadable)
        .map(
            backup ->
                List.of(
                    new Way(
                        phrases.say(DiskFiles.AREA, "open-backup", words.time(backup.time())),
                        answer -> background.run(answer, () -> restored(recovery, backup)))))
        .orElse(List.of());
  }

  private Result restored(Recovery recovery, Backup backup) {
    return recovery
        .restore(backup)
        .fold(
            restored -> understood(restored.opened()),
            fault -> new Result(refused(fault), Optional.empty()));
  }
}
