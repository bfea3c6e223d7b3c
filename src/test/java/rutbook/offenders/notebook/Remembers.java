package rutbook.offenders.notebook;

/** Static state that changes. */
final class Remembers {
  static int counted;

  private Remembers() {}
}
