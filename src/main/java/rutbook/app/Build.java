package rutbook.app;

import java.util.ResourceBundle;

/** What the build wrote down about itself. */
final class Build {
  private Build() {}

  /** The version in the project's own file, such as 1.0.0. */
  static String version() {
    return ResourceBundle.getBundle("rutbook.app.build").getString("version");
  }
}
