package rutbook.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import rutbook.edit.Editor;
import rutbook.file.Autosaver;
import rutbook.file.Disk;
import rutbook.file.Later;
import rutbook.file.SettingsFile;
import rutbook.file.UserFolders;
import rutbook.json.RulesJson;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.ui.Window;
import rutbook.ui.WindowServices;
import rutbook.ui.fx.Background;
import rutbook.ui.fx.Toolkit;
import rutbook.words.FileWords;
import rutbook.words.Phrases;

/** Makes everything that stands behind the window, and opens it. */
final class WindowStart {
  private static final int MOST_COPIES = 9;

  private final Disk disk;
  private final Clock clock;
  private final Codec codec;
  private final Phrases phrases;
  private final UserFolders folders;

  WindowStart(Disk disk, Clock clock, Codec codec, Phrases phrases, UserFolders folders) {
    this.disk = disk;
    this.clock = clock;
    this.codec = codec;
    this.phrases = phrases;
    this.folders = folders;
  }

  /**
   * Opens the window and waits until it is closed.
   *
   * @param sample what a first run opens a copy of
   * @param home the folder in which that copy is made
   * @throws Exception or an Error when no window can be opened here, for whatever reason
   */
  void run(Notebook sample, Path home) throws Exception {
    CompletableFuture<CountDownLatch> opened = new CompletableFuture<>();
    Toolkit.start(
        () -> {
          try {
            opened.complete(open(sample, home));
          } catch (RuntimeException | Error fault) {
            opened.completeExceptionally(fault);
          }
        });
    opened.get().await();
    Toolkit.end();
  }

  /** Opens the window, on its thread; the latch opens when it is closed. */
  CountDownLatch open(Notebook sample, Path home) {
    ScheduledExecutorService timer =
        Executors.newSingleThreadScheduledExecutor(task -> daemon(task, "waiting"));
    ExecutorService worker = Executors.newSingleThreadExecutor(task -> daemon(task, "disk"));
    Remembered remembered =
        new Remembered(new SettingsFile(disk, folders.config().resolve("window.properties")));
    DiskLight light = new DiskLight(clock, Toolkit::later, new FileWords(phrases, clock.getZone()));
    DiskFiles files =
        new DiskFiles(
            new DiskFiles.Means(
                disk,
                clock,
                codec,
                new Autosaver.Means(Later.on(timer), worker, clock),
                Toolkit::later,
                () -> UUID.randomUUID().toString()),
            phrases,
            remembered,
            light::show);
    Notebook notebook = first(files, remembered, sample, home);
    if (files.current().isEmpty()) {
      light.nowhere(phrases.say("App", "nowhere"));
    }
    Editor editor = new Editor(notebook);
    editor.listen(files::changed);
    Stage stage = new Stage();
    stage.addEventHandler(
        WindowEvent.WINDOW_HIDDEN,
        event -> {
          files.close();
          timer.shutdown();
          worker.shutdown();
        });
    Window.start(
        stage,
        new WindowServices(
            editor,
            () -> UUID.randomUUID().toString(),
            clock,
            phrases.locale(),
            RulesJson.ofTheTrade(),
            files,
            light,
            remembered,
            Background.threaded()));
    return Toolkit.untilClosed(stage);
  }

  private static Thread daemon(Runnable task, String name) {
    Thread thread = new Thread(task, name);
    thread.setDaemon(true);
    return thread;
  }

  /**
   * The notebook of last time, or else a copy of the sample, or else the sample unsaved. What could
   * not be opened is told once the window is there.
   */
  private Notebook first(DiskFiles files, Remembered remembered, Notebook sample, Path home) {
    for (Path path : remembered.recent()) {
      DiskFiles.Result again = files.openNow(path);
      files.tellAtStart(again.answer());
      if (again.next().isPresent()) {
        files.takeOver(again.next().get());
        return again.next().get().notebook();
      }
    }
    Notebook copy = sample.copiedAs(new NotebookId(UUID.randomUUID().toString()));
    try {
      disk.makeFolder(home);
    } catch (java.io.IOException thrown) {
      files.startUnsaved(copy);
      return copy;
    }
    return sampleCopy(files, copy, home)
        .orElseGet(
            () -> {
              files.startUnsaved(copy);
              return copy;
            });
  }

  /** The copy of today, made or made before; under another name where a broken file has its own. */
  private Optional<Notebook> sampleCopy(DiskFiles files, Notebook copy, Path home) {
    String name = files.sampleName() + " " + LocalDate.now(clock);
    for (int i = 1; i <= MOST_COPIES; i++) {
      Path path = home.resolve(name + (i == 1 ? "" : " (" + i + ")") + ".rutbook");
      DiskFiles.Result created = files.created(path, copy);
      if (created.next().isEmpty()) {
        created = files.openNow(path);
      }
      if (created.next().isPresent()) {
        files.takeOver(created.next().get());
        return created.next().map(OpenNotebook::notebook);
      }
    }
    return Optional.empty();
  }
}
