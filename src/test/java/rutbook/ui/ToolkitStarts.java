package rutbook.ui;

import javafx.application.Platform;
import javafx.scene.text.Text;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Starts the toolkit before the first test with a window, of itself; where a library of the system
 * is missing, the tests fail with the name of its package instead of a trace of the loader.
 */
public final class ToolkitStarts implements BeforeAllCallback {
  /** A busy machine may take long to show a window; that is no fault of the program. */
  private static final long LONGEST_MILLIS = 180_000;

  @Override
  public void beforeAll(ExtensionContext context) throws Exception {
    if (context.getTestClass().filter(ApplicationTest.class::isAssignableFrom).isEmpty()) {
      return;
    }
    try {
      FxToolkit.toolkitContext().setLaunchTimeoutInMillis(LONGEST_MILLIS);
      FxToolkit.toolkitContext().setSetupTimeoutInMillis(LONGEST_MILLIS);
      FxToolkit.registerPrimaryStage();
      Platform.setImplicitExit(false);
      WaitForAsyncUtils.waitForAsyncFx(LONGEST_MILLIS, () -> new Text("x").getLayoutBounds());
    } catch (Exception | Error thrown) {
      throw MissingLibrary.sentence(thrown)
          .<Error>map(AssertionError::new)
          .orElseGet(() -> new AssertionError("no window can be opened here", thrown));
    }
  }
}
