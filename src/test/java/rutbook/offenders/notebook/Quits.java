package rutbook.offenders.notebook;

/** Ends the program outside app. */
final class Quits {
  private Quits() {}

  static void quit() {
    System.exit(0);
  }
}
