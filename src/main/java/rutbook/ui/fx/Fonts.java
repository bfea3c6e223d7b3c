package rutbook.ui.fx;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.scene.text.Font;

/** The typeface that comes with the program, loaded once before the first window. */
public final class Fonts {
  private static final List<String> FILES =
      List.of(
          "IBMPlexSans-Regular",
          "IBMPlexSans-Medium",
          "IBMPlexSans-SemiBold",
          "IBMPlexSansCondensed-Regular",
          "IBMPlexSansCondensed-Medium",
          "IBMPlexSansCondensed-SemiBold");
  private static boolean loaded;

  private Fonts() {}

  public static void load() {
    if (loaded) {
      return;
    }
    loaded = true;
    for (String file : FILES) {
      try (InputStream stream =
          Fonts.class.getResourceAsStream("/rutbook/ui/fonts/" + file + ".woff")) {
        Font.loadFont(stream, 14);
      } catch (IOException broken) {
        throw new UncheckedIOException(file, broken);
      }
    }
  }
}
