package rutbook.offenders.notebook;

/** Writes to the terminal by itself. */
final class Shouts {
  private Shouts() {}

  static void shout() {
    System.out.println();
  }
}
