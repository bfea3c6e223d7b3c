package rutbook.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import rutbook.edit.Ids;
import rutbook.file.Autosaver;
import rutbook.file.Disk;
import rutbook.file.DurableFile;
import rutbook.file.FileFault;
import rutbook.file.Outcome;
import rutbook.file.SaveState;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.ui.NotebookFiles;
import rutbook.words.FileWords;
import rutbook.words.Phrases;

/** The window's files on the real disk: work on a worker, answers on the window's thread. */
final class DiskFiles implements NotebookFiles {
  static final String AREA = "App";

  /** What it works with. */
  record Means(
      Disk disk, Clock clock, Codec codec, Autosaver.Means saving, Executor window, Ids ids) {}

  private final Means means;
  private final DurableFile durable;
  private final Opening opening;
  private final Phrases phrases;
  private final FileWords words;
  private final Remembered remembered;
  private final Consumer<SaveState> told;
  private final List<Answer> atStart = new ArrayList<>();
  private Optional<OpenNotebook> open = Optional.empty();
  private Optional<Notebook> nowhere = Optional.empty();
  private Notebook startedWith;

  DiskFiles(Means means, Phrases phrases, Remembered remembered, Consumer<SaveState> told) {
    this.means = means;
    this.durable = new DurableFile(means.disk());
    this.phrases = phrases;
    this.words = new FileWords(phrases, means.clock().getZone());
    this.remembered = remembered;
    this.told = told;
    this.opening = new Opening(means, durable, phrases, told, this::inBackground);
  }

  Optional<OpenNotebook> present() {
    return open;
  }

  /** Passes on what the editor shows. */
  void changed(rutbook.edit.History history) {
    open.ifPresent(it -> it.changed(history));
    nowhere = nowhere.map(before -> history.present());
  }

  /** There was no place to keep a notebook: this one is in the window only. */
  void startUnsaved(Notebook notebook) {
    nowhere = Optional.of(notebook);
    startedWith = notebook;
  }

  /** The name that copies of the sample begin with. */
  String sampleName() {
    return say("sample-name");
  }

  @Override
  public boolean isSample() {
    return current()
        .map(path -> path.getFileName().toString().startsWith(sampleName()))
        .orElse(false);
  }

  /** Keeps what went wrong, or what a rider should know, until there is a window to tell it in. */
  void tellAtStart(Answer answer) {
    if (answer instanceof Answer.Refused
        || answer instanceof Answer.Opened opened && !opened.notice().isEmpty()) {
      atStart.add(answer);
    }
  }

  @Override
  public List<Answer> atStart() {
    return List.copyOf(atStart);
  }

  @Override
  public Optional<Path> current() {
    return open.map(it -> it.file().path());
  }

  @Override
  public boolean isThere(Path path) {
    return means.disk().exists(path);
  }

  @Override
  public Optional<Path> folder() {
    return current().map(Path::getParent).filter(means.disk()::isFolder);
  }

  @Override
  public List<Path> recent() {
    return remembered.recent();
  }

  @Override
  public void open(Path path, Consumer<Answer> answer) {
    afterFlush(answer, () -> opening.open(path));
  }

  @Override
  public void startNew(Path path, Consumer<Answer> answer) {
    Notebook fresh = Notebook.empty(new NotebookId(means.ids().next()));
    afterFlush(answer, () -> created(path, fresh));
  }

  /** Opens a new file with this notebook in it; also how a first run gets its sample. */
  Opening.Result created(Path path, Notebook notebook) {
    return opening.create(path, notebook);
  }

  /** Opens without a window, before there is one. */
  Opening.Result openNow(Path path) {
    return opening.open(path);
  }

  @Override
  public void copyTo(Path path, Consumer<Answer> answer) {
    if (open.isEmpty()) {
      inBackground(answer, () -> created(path, nowhere.orElseThrow()));
      return;
    }
    Notebook copy = open.get().notebook().copiedAs(new NotebookId(means.ids().next()));
    inBackground(
        answer,
        () -> {
          Outcome<Path> written =
              means.disk().exists(path)
                  ? Outcome.refused(new FileFault.AlreadyThere(path))
                  : durable.write(path, means.codec().write().apply(copy));
          Answer said = written.fold(done -> new Answer.Done(), opening::refused);
          return new Opening.Result(said, Optional.empty());
        });
  }

  @Override
  public void beforeClosing(Consumer<Optional<String>> answer) {
    if (nowhere.isPresent()) {
      answer.accept(Optional.of(say("nowhere")));
      return;
    }
    means
        .saving()
        .worker()
        .execute(
            () -> {
              Optional<String> fault = open.flatMap(OpenNotebook::flush).map(words::sentence);
              means.window().execute(() -> answer.accept(fault));
            });
  }

  @Override
  public void settle(Consumer<Answer> answer) {
    if (nowhere.isPresent()) {
      answer.accept(new Answer.Refused(say("nowhere"), List.of()));
      return;
    }
    Optional<OpenNotebook> present = open;
    if (present.isEmpty() || !(present.get().state() instanceof SaveState.Failed failed)) {
      answer.accept(new Answer.Done());
      return;
    }
    answer.accept(new Answer.Refused(words.sentence(failed.fault()), waysOut(failed.fault())));
  }

  private List<Way> waysOut(FileFault fault) {
    OpenNotebook it = open.orElseThrow();
    List<Way> ways = new ArrayList<>();
    if (fault instanceof FileFault.ChangedBehindOurBack) {
      ways.add(new Way(say("keep-mine"), this::keepAsCopy));
      ways.add(new Way(say("open-theirs"), answer -> reopen(it, answer)));
    } else if (fault instanceof FileFault.Missing) {
      ways.add(
          new Way(
              say("put-back"),
              answer -> {
                it.putBack();
                answer.accept(new Answer.Done());
              }));
    } else {
      ways.add(
          new Way(
              say("try-again"),
              answer -> {
                it.retry();
                answer.accept(new Answer.Done());
              }));
    }
    return ways;
  }

  private void keepAsCopy(Consumer<Answer> answer) {
    OpenNotebook it = open.orElseThrow();
    byte[] bytes = means.codec().write().apply(it.notebook());
    inBackground(
        answer, () -> opening.of(it.file().path(), it.file().keepAsCopy(bytes, say("copy-label"))));
  }

  private void reopen(OpenNotebook it, Consumer<Answer> answer) {
    Path path = it.file().path();
    it.close();
    open = Optional.empty();
    inBackground(answer, () -> opening.open(path));
  }

  /** The notebook that is open now must be safe before another takes its place. */
  private void afterFlush(Consumer<Answer> answer, Supplier<Opening.Result> attempt) {
    if (nowhere.isPresent() && nowhere.get() != startedWith) {
      answer.accept(new Answer.Refused(say("nowhere"), List.of()));
      return;
    }
    inBackground(
        answer,
        () -> {
          Optional<FileFault> unsaved = open.flatMap(OpenNotebook::flush);
          return unsaved
              .map(fault -> new Opening.Result(opening.refused(fault), Optional.empty()))
              .orElseGet(attempt);
        });
  }

  private void inBackground(Consumer<Answer> answer, Supplier<Opening.Result> attempt) {
    means
        .saving()
        .worker()
        .execute(
            () -> {
              Opening.Result result = attempt.get();
              means
                  .window()
                  .execute(
                      () -> {
                        result.next().ifPresent(this::takeOver);
                        answer.accept(result.answer());
                      });
            });
  }

  /** From now on this one is open; the one before, already saved, lets go of its file. */
  void takeOver(OpenNotebook next) {
    open.ifPresent(OpenNotebook::close);
    open = Optional.of(next);
    nowhere = Optional.empty();
    remembered.opened(next.file().path());
    told.accept(next.state());
  }

  /** At the end of the program. */
  void close() {
    open.ifPresent(OpenNotebook::close);
  }

  private String say(String key) {
    return phrases.say(AREA, key);
  }
}
