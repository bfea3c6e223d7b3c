package rutbook.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;

/**
 * Steps from one format to the next, each a function from tree to tree; a file is brought up to the
 * newest before it is read strictly.
 */
final class Upgrades {
  /** There is only one format so far. */
  static final Upgrades NONE = new Upgrades(NotebookJson.FORMAT, Map.of());

  private final int newest;
  private final SortedMap<Integer, UnaryOperator<JsonNode>> steps;

  /**
   * @param newest the format that is read strictly
   * @param steps by the format that each starts from; they must be without a gap up to the newest
   */
  Upgrades(int newest, Map<Integer, UnaryOperator<JsonNode>> steps) {
    this.newest = newest;
    this.steps = new TreeMap<>(steps);
    for (int from = oldest(); from < newest; from++) {
      if (!steps.containsKey(from)) {
        throw new IllegalArgumentException("no step from format " + from);
      }
    }
  }

  private int oldest() {
    return steps.isEmpty() ? newest : steps.firstKey();
  }

  /** The same bytes, or those of the newest format. */
  byte[] toNewest(byte[] bytes) {
    Optional<Integer> format = format(bytes);
    if (format.isEmpty() || format.get() == newest) {
      return bytes;
    }
    return upgraded(bytes, format.get());
  }

  /** The format at the head; empty where the strict reading will say what is wrong. */
  private Optional<Integer> format(byte[] bytes) {
    try (In in = new In(bytes)) {
      try {
        if (in.next() != JsonToken.START_OBJECT) {
          return Optional.empty();
        }
        while (in.next() == JsonToken.FIELD_NAME) {
          boolean here = in.fieldName().equals(NotebookShape.FORMAT);
          JsonToken value = in.next();
          if (here) {
            return value == JsonToken.VALUE_NUMBER_INT
                ? Optional.of(known(in, Numbers.WHOLE.read(in)))
                : Optional.empty();
          }
          in.parser().skipChildren();
        }
        return Optional.empty();
      } catch (JsonProcessingException thrown) {
        throw Syntax.fault(in, thrown);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private int known(In in, int format) {
    if (format >= oldest() && format <= newest) {
      return format;
    }
    Kind kind = format > newest ? Kind.NEWER_FORMAT : Kind.NO_SUCH_FORMAT;
    throw in.fault(kind, String.valueOf(format), Expected.NUMBER, List.of(String.valueOf(newest)));
  }

  private byte[] upgraded(byte[] bytes, int format) {
    try {
      JsonNode tree = Trees.MAPPER.readTree(bytes);
      for (int from = format; from < newest; from++) {
        tree = steps.get(from).apply(tree);
        ((ObjectNode) tree).put(NotebookShape.FORMAT, from + 1);
      }
      return Trees.MAPPER.writeValueAsBytes(tree);
    } catch (JsonProcessingException thrown) {
      try (In in = new In(bytes)) {
        throw Syntax.fault(in, thrown);
      } catch (IOException impossible) {
        throw new UncheckedIOException(impossible);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
