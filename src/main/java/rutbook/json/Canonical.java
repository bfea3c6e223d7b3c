package rutbook.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.Map;
import java.util.TreeMap;

/**
 * A tree as the one text that every program can make of it, after RFC 8785: fields in the order of
 * their names, no spaces, numbers and letters in one way only. White space, line ends and the order
 * of fields do not change its checksum; what is said does.
 *
 * <p>Half a surrogate pair, which the RFC refuses, stands as its escape.
 */
final class Canonical {
  /**
   * A number with more zeros than this is written with an exponent (ECMA-262, Number::toString).
   */
  private static final int MOST_PLAIN_DIGITS = 21;

  private static final int MOST_ZEROS_AFTER_POINT = 6;

  private final StringBuilder text = new StringBuilder(1 << 14);

  private Canonical() {}

  static String text(JsonNode tree) {
    Canonical canonical = new Canonical();
    canonical.value(tree);
    return canonical.text.toString();
  }

  /** Of its UTF-8, as 64 digits. */
  static String sha256(JsonNode tree) {
    try {
      byte[] bytes = text(tree).getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible); // every Java has it
    }
  }

  private void value(JsonNode node) {
    if (node.isObject()) {
      object(node);
    } else if (node.isArray()) {
      array(node);
    } else if (node.isTextual()) {
      string(node.textValue());
    } else if (node.isNumber()) {
      number(node.decimalValue());
    } else {
      text.append(node.asText()); // true, false or null
    }
  }

  private void object(JsonNode node) {
    Map<String, JsonNode> sorted = new TreeMap<>();
    node.properties().forEach(field -> sorted.put(field.getKey(), field.getValue()));
    text.append('{');
    String comma = "";
    for (Map.Entry<String, JsonNode> field : sorted.entrySet()) {
      text.append(comma);
      string(field.getKey());
      text.append(':');
      value(field.getValue());
      comma = ",";
    }
    text.append('}');
  }

  private void array(JsonNode node) {
    text.append('[');
    for (Iterator<JsonNode> each = node.elements(); each.hasNext(); ) {
      value(each.next());
      text.append(each.hasNext() ? "," : "");
    }
    text.append(']');
  }

  private void string(String written) {
    text.append('"');
    for (int i = 0; i < written.length(); i++) {
      char each = written.charAt(i);
      if (Character.isHighSurrogate(each)
          && i + 1 < written.length()
          && Character.isLowSurrogate(written.charAt(i + 1))) {
        text.append(each).append(written.charAt(++i));
      } else {
        letter(each);
      }
    }
    text.append('"');
  }

  private void letter(char each) {
    switch (each) {
      case '"' -> text.append("\\\"");
      case '\\' -> text.append("\\\\");
      case '\b' -> text.append("\\b");
      case '\f' -> text.append("\\f");
      case '\n' -> text.append("\\n");
      case '\r' -> text.append("\\r");
      case '\t' -> text.append("\\t");
      default -> {
        if (each < ' ' || Character.isSurrogate(each)) {
          text.append(String.format("\\u%04x", (int) each));
        } else {
          text.append(each);
        }
      }
    }
  }

  /** As ECMAScript writes the double that is nearest: up to 15 digits that is the number itself. */
  private void number(BigDecimal written) {
    BigDecimal number =
        written.precision() > 15 ? new BigDecimal(Double.toString(written.doubleValue())) : written;
    if (number.signum() == 0) {
      text.append('0');
      return;
    }
    BigDecimal shortest = number.stripTrailingZeros();
    String digits = shortest.unscaledValue().abs().toString();
    int point = digits.length() - shortest.scale();
    text.append(number.signum() < 0 ? "-" : "");
    if (point > MOST_PLAIN_DIGITS || point <= -MOST_ZEROS_AFTER_POINT) {
      String rest = digits.length() > 1 ? "." + digits.substring(1) : "";
      text.append(digits.charAt(0)).append(rest).append('e');
      text.append(point > 0 ? "+" : "").append(point - 1);
    } else if (point <= 0) {
      text.append("0.").append("0".repeat(-point)).append(digits);
    } else if (point >= digits.length()) {
      text.append(digits).append("0".repeat(point - digits.length()));
    } else {
      text.append(digits, 0, point).append('.').append(digits, point, digits.length());
    }
  }
}
