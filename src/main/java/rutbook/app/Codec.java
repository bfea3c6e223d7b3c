package rutbook.app;

import java.util.function.Function;
import rutbook.notebook.Notebook;

/**
 * How a notebook becomes bytes and back.
 *
 * @param read throws when the bytes make no notebook
 * @param write the bytes of a notebook
 * @param sentence what the exception of {@code read} says to a rider
 */
record Codec(
    Function<byte[], Notebook> read,
    Function<Notebook, byte[]> write,
    Function<RuntimeException, String> sentence) {

  boolean isReadable(byte[] bytes) {
    try {
      read.apply(bytes);
      return true;
    } catch (RuntimeException noNotebook) {
      return false;
    }
  }
}
