import java.io.File;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.css.Stylesheet;

/**
 * Writes the binary form of every style sheet beside it, which JavaFX reads in its place: at every
 * start the sheets need not be parsed.
 *
 * <p>{@code java -cp <JavaFX> BinarySheets.java <the folder of the sheets>}
 */
public final class BinarySheets {
  private BinarySheets() {}

  public static void main(String[] arguments) throws IOException {
    try (DirectoryStream<Path> sheets = Files.newDirectoryStream(Path.of(arguments[0]), "*.css")) {
      for (Path sheet : sheets) {
        String binary = sheet.toString().replaceAll("css$", "bss");
        Stylesheet.convertToBinary(sheet.toFile(), new File(binary));
      }
    }
  }
}
