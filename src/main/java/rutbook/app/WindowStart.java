package rutbook.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
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
import rutbook.reasoning.RuleBook;
import rutbook.ui.DialogPicker;
import rutbook.ui.FilePicker;
import rutbook.ui.NotebookFiles;
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
  private final Function<Phrases, Codec> codecs;
  private final Phrases system;
  private final UserFolders folders;

  WindowStart(
      Disk disk,
      Clock clock,
      Function<Phrases, Codec> codecs,
      Phrases system,
      UserFolders folders) {
    this.disk = disk;
    this.clock = clock;
    this.codecs = codecs;
    this.system = system;
    this.folders = folders;
  }

  /**
   * What this start is to open.
   *
   * @param file the notebook that was asked for, or a setup file, which is opened over the notebook
   *     of last time
   * @param sample what a first run opens a copy of
   * @param home the folder in which that copy is made
   * @param opened is told of the window once it is open, on its thread
   */
  record Wanted(
      Optional<Path> file, Supplier<Notebook> sample, Path home, Consumer<Window> opened) {
    private static boolean isSetup(Path file) {
      return file.getFileName().toString().endsWith(FilePicker.Kind.SETUP.ending());
    }

    Optional<Path> notebook() {
      return file.filter(each -> !isSetup(each));
    }

    /** Once the window is open, a setup file is opened in it. */
    void open(Window window) {
      opened.accept(window);
      file.filter(Wanted::isSetup).ifPresent(window::openFile);
    }
  }

  /** Everything that can be made before there is a toolkit. */
  private record Prepared(
      ScheduledExecutorService timer,
      ExecutorService worker,
      Remembered remembered,
      Phrases phrases,
      DiskLight light,
      DiskFiles files,
      First first,
      Path shelf) {}

  /** What the window begins with, and what is to be told of how that came. */
  private record First(
      Notebook notebook, Optional<OpenNotebook> open, List<NotebookFiles.Answer> told) {}

  /**
   * Opens the window and waits until it is closed. The disk is read while the toolkit starts, and
   * the rules of the trade a moment after the window is open, or as soon as a page asks for them.
   *
   * @throws Exception or an Error when no window can be opened here, for whatever reason
   */
  void run(Wanted wanted) throws Exception {
    CompletableFuture<Remembered> remembered = CompletableFuture.supplyAsync(this::remembered);
    CompletableFuture<Prepared> prepared = remembered.thenApply(it -> prepare(it, wanted));
    Supplier<RuleBook> rules = new Once<>(RulesJson::ofTheTrade);
    CompletableFuture<CountDownLatch> opened = new CompletableFuture<>();
    Toolkit.start(
        () -> {
          try {
            Window.prepare(remembered.join());
            opened.complete(show(prepared.join(), rules, wanted::open));
          } catch (RuntimeException | Error fault) {
            opened.completeExceptionally(fault);
          }
        });
    CountDownLatch closed = opened.get();
    CompletableFuture.delayedExecutor(1, TimeUnit.SECONDS).execute(rules::get);
    closed.await();
    Toolkit.end();
  }

  /** Opens the window, on its thread; the latch opens when it is closed. */
  CountDownLatch open(Notebook sample, Path home) {
    return open(Optional.empty(), sample, home);
  }

  /** The same with what was named when it was started. */
  CountDownLatch open(Optional<Path> file, Notebook sample, Path home) {
    Wanted wanted = new Wanted(file, () -> sample, home, window -> {});
    return show(prepare(remembered(), wanted), RulesJson::ofTheTrade, wanted::open);
  }

  private Remembered remembered() {
    return new Remembered(new SettingsFile(disk, folders.config().resolve("window.properties")));
  }

  private Prepared prepare(Remembered remembered, Wanted wanted) {
    ScheduledExecutorService timer =
        Executors.newSingleThreadScheduledExecutor(task -> daemon(task, "waiting"));
    ExecutorService worker = Executors.newSingleThreadExecutor(task -> daemon(task, "disk"));
    Phrases phrases =
        remembered
            .remembered()
            .language()
            .map(chosen -> new Phrases(chosen, system.display()))
            .orElse(system);
    DiskLight light = new DiskLight(clock, Toolkit::later, new FileWords(phrases, clock.getZone()));
    DiskFiles files =
        new DiskFiles(
            new DiskFiles.Means(
                disk,
                clock,
                codecs.apply(phrases),
                new Autosaver.Means(Later.on(timer), worker, clock),
                Toolkit::later,
                () -> UUID.randomUUID().toString()),
            phrases,
            remembered,
            light::show);
    First first = first(files, remembered, wanted);
    Path shelf = wanted.home().resolve("riders");
    return new Prepared(timer, worker, remembered, phrases, light, files, first, shelf);
  }

  private CountDownLatch show(Prepared it, Supplier<RuleBook> rules, Consumer<Window> opened) {
    DiskFiles files = it.files();
    Notebook notebook = it.first().notebook();
    it.first().told().forEach(files::tellAtStart);
    it.first().open().ifPresentOrElse(files::takeOver, () -> files.startUnsaved(notebook));
    if (files.current().isEmpty()) {
      it.light().nowhere(it.phrases().say("App", "nowhere"));
    }
    Editor editor = new Editor(notebook);
    editor.listen(files::changed);
    Stage stage = new Stage();
    stage.addEventHandler(
        WindowEvent.WINDOW_HIDDEN,
        event -> {
          files.close();
          it.timer().shutdown();
          it.worker().shutdown();
        });
    Window window =
        Window.start(
            stage,
            new WindowServices(
                editor,
                () -> UUID.randomUUID().toString(),
                clock,
                it.phrases().locale(),
                rules,
                files,
                new PaperSheets(
                    new PaperSheets.Means(
                        disk,
                        clock,
                        files::current,
                        it.worker(),
                        Toolkit::later,
                        SystemViewer.real()),
                    it.phrases()),
                it.light(),
                it.remembered(),
                Background.threaded(),
                new DiskOutside(
                    disk,
                    clock,
                    it.shelf(),
                    new SettingsFile(disk, folders.config().resolve("imports.properties")),
                    it.phrases(),
                    it.worker(),
                    Toolkit::later),
                new DialogPicker(stage, it.phrases().locale(), files::folder, disk::exists)));
    opened.accept(window);
    return Toolkit.untilClosed(stage);
  }

  private static Thread daemon(Runnable task, String name) {
    Thread thread = new Thread(task, name);
    thread.setDaemon(true);
    return thread;
  }

  /**
   * The notebook that was asked for, or that of last time, or else a copy of the sample, or else
   * the sample unsaved. What could not be opened is told once the window is there.
   */
  private First first(DiskFiles files, Remembered remembered, Wanted wanted) {
    List<NotebookFiles.Answer> told = new ArrayList<>();
    List<Path> places =
        Stream.concat(wanted.notebook().stream(), remembered.recent().stream()).distinct().toList();
    for (Path path : places) {
      Opening.Result again = files.openNow(path);
      told.add(again.answer());
      if (again.next().isPresent()) {
        return new First(again.next().get().notebook(), again.next(), told);
      }
    }
    Notebook copy = wanted.sample().get().copiedAs(new NotebookId(UUID.randomUUID().toString()));
    try {
      disk.makeFolder(wanted.home());
    } catch (java.io.IOException thrown) {
      return new First(copy, Optional.empty(), told);
    }
    Optional<OpenNotebook> made = sampleCopy(files, copy, wanted.home());
    return new First(made.map(OpenNotebook::notebook).orElse(copy), made, told);
  }

  /** The copy of today, made or made before; under another name where a broken file has its own. */
  private Optional<OpenNotebook> sampleCopy(DiskFiles files, Notebook copy, Path home) {
    String name = files.sampleName() + " " + LocalDate.now(clock);
    for (int i = 1; i <= MOST_COPIES; i++) {
      Path path = home.resolve(name + (i == 1 ? "" : " (" + i + ")") + ".rutbook");
      Opening.Result created = files.created(path, copy);
      if (created.next().isEmpty()) {
        created = files.openNow(path);
      }
      if (created.next().isPresent()) {
        return created.next();
      }
    }
    return Optional.empty();
  }
}
