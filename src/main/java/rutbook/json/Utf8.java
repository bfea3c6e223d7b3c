package rutbook.json;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Looks at bytes before they are parsed: UTF-8 and nothing else. */
final class Utf8 {
  private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  private Utf8() {}

  /** The bytes without the mark that some editors put in front. */
  static byte[] withoutMark(byte[] bytes) {
    boolean marked = bytes.length >= 3 && Arrays.equals(bytes, 0, 3, MARK, 0, 3);
    return marked ? Arrays.copyOfRange(bytes, 3, bytes.length) : bytes;
  }

  /** Throws at the first byte that is no UTF-8: overlong forms and lone surrogates are none. */
  static void check(byte[] bytes) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(16 << 10);
    CoderResult result;
    do {
      out.clear();
      result = decoder.decode(in, out, true);
    } while (result.isOverflow());
    if (result.isError()) {
      throw new JsonException(fault(bytes, in.position()));
    }
  }

  private static JsonFault fault(byte[] bytes, int at) {
    int line = 1;
    int lineStart = 0;
    for (int i = 0; i < at; i++) {
      if (bytes[i] == '\n') {
        line++;
        lineStart = i + 1;
      }
    }
    return new JsonFault(
        JsonFault.Kind.NOT_UTF8,
        line,
        at - lineStart + 1,
        "",
        String.format("0x%02X", bytes[at]),
        JsonFault.Expected.TEXT,
        List.of());
  }
}
