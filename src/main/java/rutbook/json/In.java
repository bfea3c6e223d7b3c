package rutbook.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.JsonTokenId;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;

/** A text being read: its tokens, and faults that know where they are. */
final class In implements AutoCloseable {
  static final JsonFactory FACTORY = ReadingLimits.factory();

  private final byte[] bytes;
  private final JsonParser parser;

  private final Repeats repeats = new Repeats();

  In(byte[] bytes) throws IOException {
    this.bytes = bytes;
    this.parser = FACTORY.createParser(bytes);
  }

  /** What was read before. */
  Repeats repeats() {
    return repeats;
  }

  JsonToken next() throws IOException {
    return parser.nextToken();
  }

  JsonToken token() {
    return parser.currentToken();
  }

  boolean atField() {
    return parser.hasTokenId(JsonTokenId.ID_FIELD_NAME);
  }

  String fieldName() throws IOException {
    return parser.currentName();
  }

  JsonParser parser() {
    return parser;
  }

  void require(JsonToken token, Expected expected) throws IOException {
    if (parser.currentToken() != token) {
      throw wrongType(expected);
    }
  }

  /** The text of the current token, which must be one. */
  String text(Expected expected) throws IOException {
    require(JsonToken.VALUE_STRING, expected);
    return parser.getText();
  }

  /** What is made of the current text, which stands in a file often. */
  <T> T repeated(Repeats.Making<T> maker, Expected expected) throws IOException {
    require(JsonToken.VALUE_STRING, expected);
    return repeats.of(maker, this);
  }

  /** Throws unless the text ends here. */
  void requireEnd() throws IOException {
    if (parser.nextToken() != null) {
      throw fault(Kind.MORE_AFTER_END, parser.getText(), Expected.NOTHING, List.of());
    }
  }

  /**
   * The text of a field that comes later in the object whose first field name is current, without
   * moving on. Empty when there is none.
   */
  Optional<String> ahead(String name, Expected expected) throws IOException {
    int start = (int) parser.currentTokenLocation().getByteOffset();
    while (bytes[start] != '{') {
      start--;
    }
    try (JsonParser ahead = FACTORY.createParser(bytes, start, bytes.length - start)) {
      ahead.nextToken();
      while (ahead.nextToken() == JsonToken.FIELD_NAME) {
        boolean here = ahead.currentName().equals(name);
        JsonToken value = ahead.nextToken();
        if (here && value == JsonToken.VALUE_STRING) {
          return Optional.of(ahead.getText());
        }
        if (here) {
          throw fault(Kind.WRONG_TYPE, String.valueOf(ahead.getText()), expected, List.of(name));
        }
        ahead.skipChildren();
      }
      return Optional.empty();
    }
  }

  JsonException wrongType(Expected expected) throws IOException {
    if (parser.hasToken(JsonToken.VALUE_NULL)) {
      return fault(Kind.IS_NULL, "null", expected, List.of());
    }
    return fault(Kind.WRONG_TYPE, String.valueOf(parser.getText()), expected, List.of());
  }

  /** A fault at the current token. */
  JsonException fault(Kind kind, String found, Expected expected, List<String> allowed) {
    return fault(kind, found, expected, allowed, null);
  }

  JsonException fault(
      Kind kind, String found, Expected expected, List<String> allowed, Throwable cause) {
    return fault(parser.currentTokenLocation(), kind, found, expected, allowed, cause);
  }

  /** A fault of the value just read, which began where the given context did. */
  JsonException faultOf(
      JsonStreamContext began, Kind kind, Expected expected, List<String> allowed, Throwable why) {
    JsonLocation start = began.startLocation(parser.currentTokenLocation().contentReference());
    return fault(start, kind, "", expected, allowed, why);
  }

  private JsonException fault(
      JsonLocation at,
      Kind kind,
      String found,
      Expected expected,
      List<String> allowed,
      Throwable cause) {
    JsonFault fault =
        new JsonFault(
            kind,
            Math.max(0, at.getLineNr()),
            Math.max(0, at.getColumnNr()),
            path(),
            found,
            expected,
            allowed);
    return new JsonException(fault, cause);
  }

  /** Where the parser stands, such as {@code entries/3/motos/0}. */
  String path() {
    String pointer = parser.getParsingContext().pathAsPointer().toString();
    return pointer.isEmpty() ? "" : pointer.substring(1);
  }

  /** The text that stands at a place, for a fault of syntax. */
  String standsAt(JsonLocation at) {
    long offset = at.getByteOffset();
    if (offset < 0 || offset >= bytes.length) {
      return "";
    }
    int from = (int) offset;
    int length = Math.min(20, bytes.length - from);
    String text = new String(bytes, from, length, StandardCharsets.UTF_8);
    return text.lines().findFirst().orElse("").strip();
  }

  @Override
  public void close() throws IOException {
    parser.close();
  }
}
