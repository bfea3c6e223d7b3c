package rutbook.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import rutbook.cli.Outbox;
import rutbook.cli.Pen;
import rutbook.cli.Refusal;
import rutbook.cli.RutbookCommand;
import rutbook.edit.Ids;
import rutbook.file.Disk;
import rutbook.file.DurableFile;
import rutbook.file.FileFault;
import rutbook.file.FileNames;
import rutbook.file.FileReading;
import rutbook.file.NotebookFile;
import rutbook.file.Outcome;
import rutbook.json.JsonException;
import rutbook.json.NotebookJson;
import rutbook.notebook.Notebook;
import rutbook.words.FileWords;
import rutbook.words.JsonWords;
import rutbook.words.Phrases;

/** The files of the command line on the disk; what goes wrong is a refusal in words. */
final class CommandFiles implements Outbox, Pen {
  private static final String ENDING = ".rutbook";

  private final Disk disk;
  private final Clock clock;
  private final Phrases phrases;
  private final FileWords words;

  CommandFiles(Disk disk, Clock clock, Phrases phrases) {
    this.disk = disk;
    this.clock = clock;
    this.phrases = phrases;
    this.words = new FileWords(phrases, clock.getZone());
  }

  /** The notebook of a file, which is only read. */
  Notebook read(String name) {
    return notebook(name, bytes(name));
  }

  /** The notebooks of a folder, by name; none is read yet. */
  List<RutbookCommand.Named> notebooksIn(String folder) {
    List<Path> paths =
        done(FileNames.path(folder).then(path -> new FileReading(disk).filesIn(path, ENDING)));
    return paths.stream()
        .map(
            path ->
                new RutbookCommand.Named(
                    path.getFileName().toString(), () -> read(path.toString())))
        .toList();
  }

  @Override
  public byte[] bytes(String name) {
    return done(
        FileNames.path(name).then(path -> new FileReading(disk).read(path, FileReading.LIMIT)));
  }

  private Notebook notebook(String name, byte[] bytes) {
    try {
      return NotebookJson.read(bytes);
    } catch (JsonException noNotebook) {
      String what = new JsonWords(phrases).sentence(noNotebook);
      throw Refusal.file(phrases.say("Cli", "file-fault", name, what), noNotebook.fault());
    }
  }

  @Override
  public Notebook change(String name, UnaryOperator<Notebook> change) {
    Path path = done(FileNames.path(name));
    NotebookFile.Opened opened = done(NotebookFile.open(disk, new DurableFile(disk), path, clock));
    try (NotebookFile file = opened.file()) {
      Notebook before = notebook(name, opened.bytes());
      Notebook after = change.apply(before);
      if (!after.equals(before)) {
        done(file.save(NotebookJson.write(after)));
      }
      return after;
    }
  }

  /** A file that a command made, whole or not at all. */
  @Override
  public void put(String name, byte[] bytes, boolean replace) {
    Outcome<?> written =
        FileNames.path(name)
            .then(
                path ->
                    disk.exists(path) && !replace
                        ? Outcome.refused(new FileFault.AlreadyThere(path))
                        : new DurableFile(disk).write(path, bytes));
    if (written.fault().filter(FileFault.AlreadyThere.class::isInstance).isPresent()) {
      throw Refusal.use(phrases.say("Cli", "card.there", name));
    }
    done(written);
  }

  private <T> T done(Outcome<T> outcome) {
    return outcome.fold(
        result -> result,
        fault -> {
          throw Refusal.file(words.sentence(fault));
        });
  }

  @Override
  public LocalDate today() {
    return LocalDate.now(clock);
  }

  @Override
  public Ids ids() {
    return () -> UUID.randomUUID().toString();
  }
}
