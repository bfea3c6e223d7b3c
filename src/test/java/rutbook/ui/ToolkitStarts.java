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
  private static final long LONGEST_MILLIS = 60_000;

  @Override
  public void beforeAll(ExtensionContext context) throws Exception {
    if (context.getTestClass().filter(ApplicationTest.class::isAssignableFrom).isEmpty()) {
      return;
    }
    try {
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
