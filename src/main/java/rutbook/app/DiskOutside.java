package rutbook.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import rutbook.file.Disk;
import rutbook.file.DurableFile;
import rutbook.file.FileReading;
import rutbook.file.Outcome;
import rutbook.file.SettingsFile;
import rutbook.json.JsonException;
import rutbook.json.SetupJson;
import rutbook.report.CardHtml;
import rutbook.report.PngPicture;
import rutbook.share.GuestFile;
import rutbook.share.GuestShelf;
import rutbook.share.SetupFile;
import rutbook.ui.OutsideFiles;
import rutbook.ui.fx.Snapshot;
import rutbook.words.FileWords;
import rutbook.words.JsonWords;
import rutbook.words.Phrases;

/** Setup files and tables on the disk: work on a worker, answers on the window's thread. */
final class DiskOutside implements OutsideFiles {
  private static final String ENDING = ".setup.json";

  private static final int MOST_MAPPINGS = 100;

  private final Disk disk;
  private final SettingsFile mappings;
  private final Path shelf;
  private final Phrases phrases;
  private final FileWords words;
  private final Executor worker;
  private final Executor window;

  /**
   * @param shelf the coach's folder, made when it is first needed
   * @param mappings what columns of tables were taken for
   */
  DiskOutside(
      Disk disk,
      Clock clock,
      Path shelf,
      SettingsFile mappings,
      Phrases phrases,
      Executor worker,
      Executor window) {
    this.mappings = mappings;
    this.disk = disk;
    this.shelf = shelf;
    this.phrases = phrases;
    this.words = new FileWords(phrases, clock.getZone());
    this.worker = worker;
    this.window = window;
  }

  private <T> void later(Consumer<Answer<T>> answer, Supplier<Answer<T>> work) {
    worker.execute(
        () -> {
          Answer<T> done = work.get();
          window.execute(() -> answer.accept(done));
        });
  }

  private <T> Answer<T> told(Outcome<T> outcome) {
    return outcome.fold(Answer.Done::new, fault -> new Answer.Refused<>(words.sentence(fault)));
  }

  @Override
  public void open(Path path, Consumer<Answer<Opened>> answer) {
    later(answer, () -> read(path));
  }

  private Answer<Opened> read(Path path) {
    return new FileReading(disk)
        .read(path, FileReading.LIMIT)
        .<Answer<Opened>>fold(this::opened, fault -> new Answer.Refused<>(words.sentence(fault)));
  }

  private Answer<Opened> opened(byte[] bytes) {
    try {
      SetupJson.Read read = SetupJson.read(bytes);
      return new Answer.Done<>(new Opened(read.file(), read.hasChecksum(), read.ridersChecksum()));
    } catch (JsonException noSetup) {
      return new Answer.Refused<>(new JsonWords(phrases).sentence(noSetup));
    }
  }

  @Override
  public void write(Path path, SetupFile file, Consumer<Answer<Path>> answer) {
    later(answer, () -> told(new DurableFile(disk).write(path, SetupJson.write(file))));
  }

  @Override
  public void writeCard(Path beside, SetupFile file, Consumer<Answer<Path>> answer) {
    later(
        answer,
        () -> {
          String name = beside.getFileName().toString();
          String stem =
              name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
          String page = new CardHtml(phrases.locale()).page(SetupFileCard.of(file, phrases));
          return told(
              new DurableFile(disk)
                  .write(
                      beside.resolveSibling(stem + ".html"),
                      page.getBytes(StandardCharsets.UTF_8)));
        });
  }

  @Override
  public String checksum(SetupFile file) {
    return SetupJson.checksum(file);
  }

  @Override
  public void shelf(Consumer<Answer<Shelf>> answer) {
    later(
        answer,
        () ->
            disk.exists(shelf)
                ? new FileReading(disk)
                    .filesIn(shelf, ENDING)
                    .<Answer<Shelf>>fold(
                        files -> new Answer.Done<>(shelf(files)),
                        fault -> new Answer.Refused<>(words.sentence(fault)))
                : new Answer.Done<>(shelf(List.of())));
  }

  private Shelf shelf(List<Path> paths) {
    List<GuestFile> files = new ArrayList<>();
    List<Unread> unread = new ArrayList<>();
    for (Path path : paths) {
      String name = path.getFileName().toString();
      Answer<Opened> read = read(path);
      if (read instanceof Answer.Done<Opened> done) {
        files.add(new GuestFile(name, done.value().file()));
      } else if (read instanceof Answer.Refused<Opened> no) {
        unread.add(new Unread(name, no.sentence()));
      }
    }
    return new Shelf(GuestShelf.of(files), unread);
  }

  private Optional<GuestFile> guest(Path path) {
    return read(path) instanceof Answer.Done<Opened> done
        ? Optional.of(new GuestFile(path.getFileName().toString(), done.value().file()))
        : Optional.empty();
  }

  /** What the coach began to write is not lost when the rider's file is opened once more. */
  @Override
  public void keep(SetupFile file, Consumer<Answer<GuestFile>> answer) {
    later(
        answer,
        () -> {
          Path path = shelf.resolve(name(file));
          Optional<GuestFile> before = disk.exists(path) ? guest(path) : Optional.empty();
          if (file.coach().isEmpty() && before.isPresent()) {
            return new Answer.Done<>(before.get());
          }
          try {
            disk.makeFolder(shelf);
          } catch (IOException thrown) {
            return new Answer.Refused<>(phrases.say("App", "no-shelf", shelf.toString()));
          }
          return told(
              new DurableFile(disk)
                  .write(path, SetupJson.write(file))
                  .map(written -> new GuestFile(path.getFileName().toString(), file)));
        });
  }

  /** The program's own name for it: no file names a place on the disk. */
  private static String name(SetupFile file) {
    String which = file.handOver().notebook() + "/" + file.handOver().id();
    return UUID.nameUUIDFromBytes(which.getBytes(StandardCharsets.UTF_8)) + ENDING;
  }

  @Override
  public Optional<String> mapping(String fingerprint) {
    return Optional.ofNullable(mappings.load().get(fingerprint));
  }

  /** Comfort only: what cannot be stored is found by looking again. */
  @Override
  public void remember(String fingerprint, String mapping) {
    Map<String, String> kept = new TreeMap<>(mappings.load());
    kept.put(fingerprint, mapping);
    while (kept.size() > MOST_MAPPINGS) {
      kept.remove(
          kept.keySet().stream().filter(it -> !it.equals(fingerprint)).findFirst().orElseThrow());
    }
    worker.execute(() -> mappings.store(kept));
  }

  @Override
  public void picture(Path path, Snapshot picture, boolean replace, Consumer<Pictured> answer) {
    worker.execute(
        () -> {
          Pictured done =
              disk.exists(path) && !replace ? new Pictured.There(path) : written(path, picture);
          window.execute(() -> answer.accept(done));
        });
  }

  private Pictured written(Path path, Snapshot picture) {
    byte[] bytes = PngPicture.of(picture.width(), picture.height(), picture.argb());
    return new DurableFile(disk)
        .write(path, bytes)
        .<Pictured>fold(Pictured.Done::new, fault -> new Pictured.Refused(words.sentence(fault)));
  }

  @Override
  public void table(Path path, int most, Consumer<Answer<byte[]>> answer) {
    later(answer, () -> told(new FileReading(disk).read(path, most)));
  }
}
