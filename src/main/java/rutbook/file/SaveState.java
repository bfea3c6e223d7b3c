package rutbook.file;

import java.time.Instant;
import java.util.Optional;

/** How things stand between the notebook in memory and the one on the disk. */
public sealed interface SaveState {

  /**
   * What is in memory is on the disk.
   *
   * @param at when it was saved or opened
   * @param noBackup why the version before was not kept, if it was not
   */
  record Saved(Instant at, Optional<FileFault> noBackup) implements SaveState {}

  /**
   * A change is waiting for a moment of quiet, or is being written.
   *
   * @param since when the oldest change that is not on the disk was made
   * @param slow the disk has been busy with it for longer than anyone expects
   */
  record Waiting(Instant since, boolean slow) implements SaveState {}

  /**
   * The last attempt failed; the newest changes are in memory only.
   *
   * @param at when it failed
   * @param triedAgain whether it is tried again without the rider doing anything
   */
  record Failed(FileFault fault, Instant at, boolean triedAgain) implements SaveState {}
}
