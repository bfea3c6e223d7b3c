package rutbook.offenders.notebook;

/** A sentence in a pure package. */
final class Talks {
  private Talks() {}

  static String sentence(int clicks) {
    return "%d clicks are too many".formatted(clicks);
  }
}
