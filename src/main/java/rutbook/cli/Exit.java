package rutbook.cli;

/** What the program ends with. */
final class Exit {
  static final int DONE = 0;

  /** A check or a plan found a problem or a shortfall. */
  static final int PROBLEM = 1;

  static final int WRONG_USE = 2;
  static final int NO_FILE = 3;

  /** One sentence was said; the log has the trace. */
  static final int UNEXPECTED = 4;

  private Exit() {}
}
