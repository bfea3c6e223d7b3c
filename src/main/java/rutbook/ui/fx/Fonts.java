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

  private Fonts() {}

  /** Filled when it is first asked for. */
  private static final class Loaded {
    static final List<Font> FACES = FILES.stream().map(Fonts::face).toList();
  }

  /** The faces, known to the toolkit from now on by their family names. */
  public static List<Font> load() {
    return Loaded.FACES;
  }

  private static Font face(String file) {
    try (InputStream stream =
        Fonts.class.getResourceAsStream("/rutbook/ui/fonts/" + file + ".woff")) {
      return Font.loadFont(stream, 14);
    } catch (IOException broken) {
      throw new UncheckedIOException(file, broken);
    }
  }
}
