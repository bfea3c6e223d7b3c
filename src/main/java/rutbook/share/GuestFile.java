package rutbook.share;

/**
 * A setup file on the coach's shelf.
 *
 * @param name of the file within the shelf's folder, as the disk gives it, never as a file says
 */
public record GuestFile(String name, SetupFile file) {

  /** Whether the coach has not handed it back yet. */
  public boolean isWaiting() {
    return file.coach().flatMap(CoachPart::handedBack).isEmpty();
  }

  /** Whether the coach has begun to write and not handed it back. */
  public boolean isBegun() {
    return isWaiting() && file.coach().isPresent();
  }
}
