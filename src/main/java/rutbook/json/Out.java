package rutbook.json;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import rutbook.units.Display;
import rutbook.units.Unit;

/** A text being written: indented, UTF-8, with a line end at its end. */
final class Out {
  /** Something that writes one value. */
  interface Part {
    void write(Out out) throws IOException;
  }

  private final JsonGenerator generator;
  private final Optional<Display> units;
  private final Layout layout = new Layout();

  private Out(JsonGenerator generator, Optional<Display> units) {
    this.generator = generator;
    this.units = units;
    generator.setPrettyPrinter(layout);
  }

  /**
   * A text as long as it gets.
   *
   * @param units those in which answers give their amounts; empty leaves each as it was written
   */
  static byte[] bytes(Optional<Display> units, Part part) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 14);
    write(bytes, units, part);
    return bytes.toByteArray();
  }

  /**
   * A text for a file.
   *
   * @param most how many bytes such a file may have
   * @throws JsonException when it gets longer than a file may be
   */
  static byte[] fileBytes(int most, Part part) {
    FileBytes bytes = new FileBytes(most);
    write(bytes, Optional.empty(), part);
    return bytes.toByteArray();
  }

  private static void write(OutputStream bytes, Optional<Display> units, Part part) {
    try (JsonGenerator generator = In.FACTORY.createGenerator(bytes, JsonEncoding.UTF8)) {
      part.write(new Out(generator, units));
      generator.writeRaw('\n');
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** Bytes that refuse to become more than a file may have. */
  private static final class FileBytes extends ByteArrayOutputStream {
    private final int most;

    private FileBytes(int most) {
      super(1 << 14);
      this.most = most;
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int length) {
      if (count + (long) length > most) {
        throw ReadingLimits.tooLarge(count + (long) length, most);
      }
      super.write(bytes, from, length);
    }
  }

  /** The unit in which an amount is answered. */
  Unit unit(Unit written) {
    return units.map(display -> display.unit(written.dimension())).orElse(written);
  }

  JsonGenerator generator() {
    return generator;
  }

  /** Writes a part on one line, or as the rest around it. */
  void together(boolean oneLine, Part part) throws IOException {
    boolean before = layout.oneLine(oneLine || layout.isOneLine());
    part.write(this);
    layout.oneLine(before);
  }

  void field(String name) throws IOException {
    generator.writeFieldName(name);
  }

  /** A text; half a surrogate pair, which has no UTF-8, is written as its escape. */
  void text(String text) throws IOException {
    if (isWhole(text)) {
      generator.writeString(text);
    } else {
      generator.writeRawValue(escaped(text));
    }
  }

  private static boolean isWhole(String text) {
    for (int i = 0; i < text.length(); i++) {
      char each = text.charAt(i);
      if (Character.isSurrogate(each)) {
        if (Character.isLowSurrogate(each)
            || i + 1 == text.length()
            || !Character.isLowSurrogate(text.charAt(i + 1))) {
          return false;
        }
        i++;
      }
    }
    return true;
  }

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      escaped.append(String.format("\\u%04x", (int) text.charAt(i)));
    }
    return escaped.append('"').toString();
  }
}
