package rutbook.cli;

import java.util.Optional;

/** What the program does when no command is given: handed in by whoever starts it. */
public interface Program {
  /** The version that was built, such as 1.0.0. */
  String version();

  /** Prints the tour of the sample notebook. */
  void tour();

  /**
   * Opens the window.
   *
   * @param file the notebook to open in it; without one, the notebook of last time
   */
  void window(Optional<String> file);

  /** Opens the window and every page of it once, and ends. */
  void rehearse();
}
