package rutbook.file;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * A save that is safe on the disk.
 *
 * @param file the file written, behind all links
 * @param at when, by the clock
 * @param backup why the version before could not be kept as a backup, if it could not
 */
public record Saved(Path file, Instant at, Optional<FileFault> backup) {}
