package rutbook.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;
import rutbook.notebook.Notebook;

/** The notebook's file: bytes to a checked notebook and back. */
public final class NotebookJson {
  /** The format that is written; older ones are brought up to it when read. */
  public static final int FORMAT = 1;

  private static final NotebookShape SHAPE = new NotebookShape();

  private NotebookJson() {}

  /**
   * UTF-8, indented, in a stable order, with a line end at the end; {@link #read} reads it.
   *
   * @throws JsonException when it becomes larger than a file may be
   */
  public static byte[] write(Notebook notebook) {
    return Out.fileBytes(out -> SHAPE.write(notebook, out));
  }

  /**
   * Reads strictly: what is unknown, doubled, missing or beyond a limit is a fault with its place.
   *
   * @throws JsonException with line, column and path, or the two formats when the file is newer
   */
  public static Notebook read(byte[] bytes) {
    return read(bytes, Upgrades.NONE);
  }

  /** Reads with the given steps from older formats. */
  static Notebook read(byte[] file, Upgrades upgrades) {
    if (file.length > ReadingLimits.BYTES) {
      throw ReadingLimits.tooLarge(file.length);
    }
    byte[] bytes = Utf8.withoutMark(file);
    Utf8.check(bytes);
    return shaped(upgrades.toNewest(bytes));
  }

  private static Notebook shaped(byte[] bytes) {
    try (In in = new In(bytes)) {
      try {
        in.next();
        if (in.token() == null) {
          throw in.fault(Kind.ENDS_EARLY, "", Expected.OBJECT, List.of());
        }
        in.require(JsonToken.START_OBJECT, Expected.OBJECT);
        Notebook notebook = SHAPE.read(in);
        in.requireEnd();
        return notebook;
      } catch (JsonProcessingException thrown) {
        throw Syntax.fault(in, thrown);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
