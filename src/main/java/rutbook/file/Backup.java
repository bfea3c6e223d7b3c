package rutbook.file;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An earlier version of a notebook. Number and time are read from its name, since copying folders
 * about loses the times the disk keeps.
 *
 * @param number greater is newer, whatever the clock said
 * @param time when it was made, to the second
 */
public record Backup(Path file, int number, Instant time) {
  private static final Pattern NAME = Pattern.compile("(\\d{6,9})-(\\d{8}T\\d{6})Z(\\..*)?");
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);

  /** The name of a backup: it keeps the notebook's ending, so that it opens like one. */
  static String name(Path notebook, int number, Instant time) {
    String whole = notebook.getFileName().toString();
    int dot = whole.lastIndexOf('.');
    String ending = dot > 0 ? whole.substring(dot) : "";
    String stamp = TIME.format(LocalDateTime.ofInstant(time, ZoneOffset.UTC));
    return String.format(Locale.ROOT, "%06d-%sZ%s", number, stamp, ending);
  }

  /** The backup a file is, or empty for any other file. */
  static Optional<Backup> from(Path file) {
    Matcher name = NAME.matcher(file.getFileName().toString());
    if (!name.matches()) {
      return Optional.empty();
    }
    try {
      Instant time = LocalDateTime.parse(name.group(2), TIME).toInstant(ZoneOffset.UTC);
      return Optional.of(new Backup(file, Integer.parseInt(name.group(1)), time));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }
}
