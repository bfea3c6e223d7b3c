package rutbook.cli;

/** Where a command leaves a file that it made. */
@FunctionalInterface
public interface Outbox {
  /**
   * Writes the whole file or nothing.
   *
   * @param name as it was typed
   * @param replace whether a file that is already there may be replaced
   * @throws Refusal when it cannot be written, or is already there and may not be replaced
   */
  void put(String name, byte[] bytes, boolean replace);
}
