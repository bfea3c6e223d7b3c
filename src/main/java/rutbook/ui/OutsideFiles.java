package rutbook.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rutbook.share.GuestFile;
import rutbook.share.GuestShelf;
import rutbook.share.SetupFile;
import rutbook.ui.fx.Snapshot;

/**
 * What the window asks of files that are no notebook of its own: setup files on their way to a
 * coach and back, the coach's shelf, tables to import, pictures. Calls return at once; answers come
 * on the window's thread. Names of files are chosen by the rider or by the program, never by a
 * file.
 */
public interface OutsideFiles {
  /** How an attempt went. */
  sealed interface Answer<T> {
    record Done<T>(T value) implements Answer<T> {}

    /** What happened, and what can be done about it. */
    record Refused<T>(String sentence) implements Answer<T> {}
  }

  /**
   * A setup file as it was read.
   *
   * @param hasChecksum whether it had one, which fitted
   * @param ridersChecksum of what the rider handed over
   */
  record Opened(SetupFile file, boolean hasChecksum, String ridersChecksum) {}

  /** How an attempt to leave a picture behind went. */
  sealed interface Pictured {
    record Done(Path path) implements Pictured {}

    /** A file of that name was there and was left as it is: nobody said that it may go. */
    record There(Path path) implements Pictured {}

    /** What happened, and what can be done about it. */
    record Refused(String sentence) implements Pictured {}
  }

  /** Reads a setup file, whatever is in it. */
  void open(Path path, Consumer<Answer<Opened>> answer);

  /** Writes a setup file, in place of one that the rider chose to replace. */
  void write(Path path, SetupFile file, Consumer<Answer<Path>> answer);

  /** The card of the setup that is asked about, as a page beside the file. */
  void writeCard(Path beside, SetupFile file, Consumer<Answer<Path>> answer);

  /** The checksum that the record of a handing over keeps. */
  String checksum(SetupFile file);

  /**
   * The coach's shelf.
   *
   * @param unread of each file there that could not be read, its name and what is wrong with it
   */
  record Shelf(GuestShelf riders, List<Unread> unread) {
    public Shelf {
      unread = List.copyOf(unread);
    }
  }

  /** A file that could not be read. */
  record Unread(String name, String sentence) {}

  /** The coach's shelf. */
  void shelf(Consumer<Answer<Shelf>> answer);

  /** Keeps a file on the coach's shelf, in place of an earlier state of the same handing over. */
  void keep(SetupFile file, Consumer<Answer<GuestFile>> answer);

  /** What the columns of a table of that make were taken for the last time. */
  Optional<String> mapping(String fingerprint);

  void remember(String fingerprint, String mapping);

  /**
   * Writes a picture as .png.
   *
   * @param replace whether a file that is there may go
   */
  void picture(Path path, Snapshot picture, boolean replace, Consumer<Pictured> answer);

  /** The bytes of a table that the rider chose. */
  void table(Path path, int most, Consumer<Answer<byte[]>> answer);
}
