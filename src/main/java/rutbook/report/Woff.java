package rutbook.report;

import java.nio.ByteBuffer;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * A web font unpacked to the font it was made of: WOFF 1.0 (W3C Recommendation, 2012) holds the
 * tables of a TrueType file, each compressed by itself.
 */
final class Woff {
  private static final int SIGNATURE = 0x774F4646;
  private static final int HEADER = 44;
  private static final int ENTRY = 20;
  private static final int MOST_TABLES = 100;
  private static final int MOST_BYTES = 16 << 20;

  private Woff() {}

  /**
   * The bytes of the TrueType file.
   *
   * @throws IllegalArgumentException when it is no such font
   */
  static byte[] unpacked(byte[] woff) {
    ByteBuffer in = ByteBuffer.wrap(woff);
    if (woff.length < HEADER || in.getInt(0) != SIGNATURE) {
      throw new IllegalArgumentException("no WOFF font of " + woff.length + " bytes");
    }
    int tables = in.getShort(12) & 0xFFFF;
    int size = in.getInt(16);
    if (tables < 1 || tables > MOST_TABLES || size < 0 || size > MOST_BYTES) {
      throw new IllegalArgumentException("a font of " + tables + " tables, " + size + " bytes");
    }
    ByteBuffer out = ByteBuffer.allocate(size);
    header(out, in.getInt(4), tables);
    int at = 12 + 16 * tables;
    for (int i = 0; i < tables; i++) {
      int entry = HEADER + ENTRY * i;
      int length = in.getInt(entry + 12);
      byte[] table = table(woff, in.getInt(entry + 4), in.getInt(entry + 8), length);
      out.putInt(in.getInt(entry)).putInt(in.getInt(entry + 16)).putInt(at).putInt(length);
      System.arraycopy(table, 0, out.array(), at, length);
      at += (length + 3) & ~3;
    }
    return out.array();
  }

  private static void header(ByteBuffer out, int flavour, int tables) {
    int power = Integer.highestOneBit(tables);
    out.putInt(flavour)
        .putShort((short) tables)
        .putShort((short) (power * 16))
        .putShort((short) Integer.numberOfTrailingZeros(power))
        .putShort((short) ((tables - power) * 16));
  }

  private static byte[] table(byte[] woff, int offset, int packed, int length) {
    byte[] table = new byte[length];
    if (packed == length) {
      System.arraycopy(woff, offset, table, 0, length);
      return table;
    }
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(woff, offset, packed);
      if (inflater.inflate(table) != length) {
        throw new IllegalArgumentException("a table of the font is shorter than " + length);
      }
    } catch (DataFormatException damaged) {
      throw new IllegalArgumentException("a table of the font is damaged", damaged);
    } finally {
      inflater.end();
    }
    return table;
  }
}
