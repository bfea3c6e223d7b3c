package rutbook.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;

/** The text of a file as a whole: looked at before it is parsed, then read strictly to its end. */
final class WholeText {
  private WholeText() {}

  /**
   * The bytes without a mark in front, once they are known to be UTF-8 and not too many.
   *
   * @throws JsonException when they are not
   */
  static byte[] checked(byte[] file, int most) {
    if (file.length > most) {
      throw ReadingLimits.tooLarge(file.length, most);
    }
    byte[] bytes = Utf8.withoutMark(file);
    Utf8.check(bytes);
    return bytes;
  }

  /** The one value that the text is. */
  static <T> T read(byte[] bytes, Shape<T> shape) {
    try (In in = new In(bytes)) {
      try {
        in.next();
        if (in.token() == null) {
          throw in.fault(Kind.ENDS_EARLY, "", Expected.OBJECT, List.of());
        }
        in.require(JsonToken.START_OBJECT, Expected.OBJECT);
        T value = shape.read(in);
        in.requireEnd();
        return value;
      } catch (JsonProcessingException thrown) {
        throw Syntax.fault(in, thrown);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
