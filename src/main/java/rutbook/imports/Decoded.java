package rutbook.imports;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Bytes read as text: as their byte order mark says, else as UTF-8 where they are that letter by
 * letter, else as Windows-1252, which spreadsheets still write.
 */
record Decoded(String text, Charset charset) {
  private static final Charset WINDOWS = Charset.forName("windows-1252");
  private static final char MARK = '\uFEFF';

  static Decoded of(byte[] bytes) {
    Charset marked = marked(bytes);
    Decoded decoded = marked == null ? unmarked(bytes) : strict(bytes, marked);
    if (decoded.text.indexOf('\0') >= 0) {
      throw new ImportException(ImportException.Fault.NOT_TEXT);
    }
    return decoded;
  }

  /** The character set that a byte order mark tells; null where there is none. */
  private static Charset marked(byte[] bytes) {
    if (begins(bytes, 0xEF, 0xBB, 0xBF)) {
      return StandardCharsets.UTF_8;
    }
    if (begins(bytes, 0xFF, 0xFE)) {
      return StandardCharsets.UTF_16LE;
    }
    return begins(bytes, 0xFE, 0xFF) ? StandardCharsets.UTF_16BE : null;
  }

  private static boolean begins(byte[] bytes, int... mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if ((bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static Decoded unmarked(byte[] bytes) {
    try {
      return decode(bytes, StandardCharsets.UTF_8);
    } catch (CharacterCodingException noUtf8) {
      return new Decoded(new String(bytes, WINDOWS), WINDOWS);
    }
  }

  private static Decoded strict(byte[] bytes, Charset charset) {
    try {
      return decode(bytes, charset);
    } catch (CharacterCodingException broken) {
      throw new ImportException(ImportException.Fault.NOT_TEXT);
    }
  }

  private static Decoded decode(byte[] bytes, Charset charset) throws CharacterCodingException {
    String text = charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    boolean mark = !text.isEmpty() && text.charAt(0) == MARK;
    return new Decoded(mark ? text.substring(1) : text, charset);
  }
}
