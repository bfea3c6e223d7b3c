package rutbook.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Names for drafts: short whatever the file is called, and never the same in two programs. */
final class DraftName {
  private static final String END = ".draft";

  private DraftName() {}

  static Path of(Path target, long number) {
    return target.resolveSibling(
        start(target) + ProcessHandle.current().pid() + "-" + number + END);
  }

  static boolean isDraftOf(Path target, Path entry) {
    Path name = entry.getFileName();
    return name != null
        && name.toString().startsWith(start(target))
        && name.toString().endsWith(END);
  }

  private static String start(Path target) {
    byte[] name = String.valueOf(target.getFileName()).getBytes(StandardCharsets.UTF_8);
    return ".rutbook-" + hash(name).substring(0, 12) + "-";
  }

  private static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java platform has SHA-256", impossible);
    }
  }
}
