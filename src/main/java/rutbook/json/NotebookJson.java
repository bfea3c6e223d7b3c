package rutbook.json;

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
    return Out.fileBytes(ReadingLimits.BYTES, out -> SHAPE.write(notebook, out));
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
    byte[] bytes = WholeText.checked(file, ReadingLimits.BYTES);
    return WholeText.read(upgrades.toNewest(bytes), SHAPE);
  }
}
