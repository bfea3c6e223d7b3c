package rutbook.cli;

/** A sentence for the person at the terminal, and the exit code that goes with it. */
public final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int exit;

  private Refusal(int exit, String sentence) {
    super(sentence);
    this.exit = exit;
  }

  /** The command was used wrongly: exit 2. */
  public static Refusal use(String sentence) {
    return new Refusal(Exit.WRONG_USE, sentence);
  }

  /** The file cannot be read: exit 3. */
  public static Refusal file(String sentence) {
    return new Refusal(Exit.NO_FILE, sentence);
  }

  int exit() {
    return exit;
  }
}
