package rutbook.file;

import java.time.Instant;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;
import java.util.zip.Checksum;

/**
 * What the file was when it was last read or saved here, to notice that somebody else wrote it
 * since.
 *
 * @param size bytes
 * @param modified the disk's time, to tell the rider; a time alone never counts as a change
 * @param sums two cyclic sums of the bytes, 64 bits together. They are for what happens, not
 *     against somebody who wants the same sums: whoever can do that could as well write the file.
 *     They cost a tenth of a cryptographic hash.
 */
record Seen(long size, Instant modified, long sums) {

  static Seen of(byte[] bytes, Instant modified) {
    return new Seen(
        bytes.length, modified, sum(new CRC32(), bytes) << 32 | sum(new CRC32C(), bytes));
  }

  private static long sum(Checksum checksum, byte[] bytes) {
    checksum.update(bytes, 0, bytes.length);
    return checksum.getValue();
  }

  boolean hasBytesOf(Seen other) {
    return size == other.size && sums == other.sums;
  }
}
