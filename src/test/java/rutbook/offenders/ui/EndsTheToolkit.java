package rutbook.offenders.ui;

import javafx.application.Platform;

/** The toolkit ended outside ui.fx. */
final class EndsTheToolkit {
  private EndsTheToolkit() {}

  static void end() {
    Platform.exit();
  }
}
