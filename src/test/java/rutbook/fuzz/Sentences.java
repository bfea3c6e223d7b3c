package rutbook.fuzz;

/** What a rider is told must be something that can be read. */
final class Sentences {
  private static final int LONGEST = 4_000;

  private Sentences() {}

  static void require(String sentence) {
    if (sentence.isBlank() || sentence.length() > LONGEST) {
      throw new AssertionError("told in " + sentence.length() + " letters: " + sentence);
    }
  }
}
