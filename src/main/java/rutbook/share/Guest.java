package rutbook.share;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import rutbook.notebook.BikeId;
import rutbook.notebook.NotebookId;

/**
 * A rider's bike on the coach's shelf, with all that was handed over of it, newest first.
 *
 * @param files never empty
 */
public record Guest(List<GuestFile> files) {
  private static final Comparator<GuestFile> NEWEST_FIRST =
      Comparator.comparing((GuestFile each) -> each.file().handOver().day())
          .reversed()
          .thenComparing(GuestFile::name);

  /** Whose files belong together. */
  record Key(NotebookId notebook, BikeId bike) {
    static Key of(GuestFile file) {
      return new Key(file.file().handOver().notebook(), file.file().excerpt().bike().id());
    }
  }

  public Guest {
    files = files.stream().sorted(NEWEST_FIRST).toList();
    if (files.isEmpty()) {
      throw new IllegalArgumentException("a guest without a file");
    }
  }

  public GuestFile newest() {
    return files.get(0);
  }

  public String rider() {
    return newest().file().excerpt().rider().name();
  }

  public String bike() {
    return newest().file().excerpt().bike().name();
  }

  public LocalDate lastHandedOver() {
    return newest().file().handOver().day();
  }

  public long waiting() {
    return files.stream().filter(GuestFile::isWaiting).count();
  }
}
