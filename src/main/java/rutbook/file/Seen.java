package rutbook.file;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;

/**
 * What the file was when it was last read or saved here, to notice that somebody else wrote it
 * since.
 *
 * @param size bytes
 * @param modified the disk's time, to tell the rider; a time alone never counts as a change
 * @param hash SHA-256 of the bytes, in hexadecimal
 */
record Seen(long size, Instant modified, String hash) {

  static Seen of(byte[] bytes, Instant modified) {
    return new Seen(bytes.length, modified, hash(bytes));
  }

  boolean hasBytesOf(Seen other) {
    return size == other.size && hash.equals(other.hash);
  }

  static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java platform has SHA-256", impossible);
    }
  }
}
