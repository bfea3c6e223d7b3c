package rutbook.ui.bike;

import javafx.scene.Node;

/** One step of the guided start: what it asks, and whether the answers will do. */
interface StartStep {
  Node node();

  /**
   * Reads the answers.
   *
   * @throws Refused at the first one that cannot be
   */
  void check(Answers answers);
}
