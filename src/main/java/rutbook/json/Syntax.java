package rutbook.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.List;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;

/** Faults of the parser told as ours. */
final class Syntax {
  private Syntax() {}

  static JsonException fault(In in, JsonProcessingException thrown) {
    Kind kind = Kind.SYNTAX;
    if (thrown instanceof StreamConstraintsException) {
      kind = thrown.getOriginalMessage().contains("depth") ? Kind.TOO_DEEP : Kind.TOO_LONG;
    } else if (thrown instanceof JsonEOFException) {
      kind = Kind.ENDS_EARLY;
    }
    List<String> allowed =
        kind == Kind.TOO_DEEP ? List.of(String.valueOf(ReadingLimits.DEPTH)) : List.of();
    String found = thrown.getLocation() == null ? "" : in.standsAt(thrown.getLocation());
    return in.fault(kind, found, Expected.NOTHING, allowed, thrown);
  }
}
