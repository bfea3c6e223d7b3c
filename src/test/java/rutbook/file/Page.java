package rutbook.file;

import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;

/** Bytes that know their number and whether all of them are there, in place of a notebook. */
final class Page {
  private Page() {}

  static byte[] of(int number) {
    return of(number, 20 + number * 7 % 50);
  }

  static byte[] of(int number, int filling) {
    String text = number + "|" + filling + "|" + "x".repeat(filling) + "|" + number;
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** The number, or empty when anything is missing. */
  static OptionalInt number(byte[] bytes) {
    String[] parts = new String(bytes, StandardCharsets.UTF_8).split("\\|", -1);
    if (parts.length != 4
        || !parts[0].equals(parts[3])
        || !parts[1].equals(String.valueOf(parts[2].length()))) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(Integer.parseInt(parts[0]));
  }

  static boolean readable(byte[] bytes) {
    return number(bytes).isPresent();
  }
}
