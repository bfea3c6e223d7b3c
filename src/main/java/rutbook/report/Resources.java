package rutbook.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** What lies beside the program: style sheets and the bundled fonts. */
final class Resources {
  private static final String FONTS = "/rutbook/ui/fonts/";

  private Resources() {}

  static String text(String name) {
    return new String(bytes("/rutbook/report/" + name), StandardCharsets.UTF_8);
  }

  /** A bundled font as TrueType. */
  static byte[] font(String name) {
    return Woff.unpacked(bytes(FONTS + name + ".woff"));
  }

  private static byte[] bytes(String path) {
    try (InputStream in = Resources.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("not in the program: " + path);
      }
      return in.readAllBytes();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
