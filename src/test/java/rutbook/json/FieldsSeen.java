package rutbook.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Which fields of the shapes stand in a text, and which do not. */
final class FieldsSeen {
  private final Set<String> all = new TreeSet<>();
  private final Set<String> seen = new TreeSet<>();

  void look(Shape<?> shape, JsonNode value) {
    if (shape instanceof PresentShape<?> present) {
      look(present.shape(), value);
    } else if (shape instanceof ListShape<?> list) {
      value.forEach(each -> look(list.element(), each));
    } else if (shape instanceof SetupShape setup) {
      look(setup.list(), value);
    } else if (shape instanceof ReadingShape reading && value.isObject()) {
      boolean unknown = value.has("unknown");
      look(reading.objects().get(unknown ? 1 : 0), value);
    } else if (shape instanceof ReadingShape.ValueShape one && value.isObject()) {
      look(one.object(), value);
    } else if (shape instanceof LapShape lap && value.isObject()) {
      look(lap.droppedLap(), value);
    } else if (shape instanceof KindsShape<?> kinds) {
      kinds.kinds().forEach((word, kind) -> count(kind));
      look(kinds.kinds().get(value.path(RecordShape.KIND).asText()), value);
    } else if (shape instanceof RecordShape<?> record) {
      count(record);
      for (Map.Entry<String, Shape<?>> field : record.shapes().entrySet()) {
        if (value.has(field.getKey())) {
          seen.add(name(record, field.getKey()));
          look(field.getValue(), value.get(field.getKey()));
        }
      }
    }
  }

  private void count(RecordShape<?> record) {
    record.fieldNames().forEach(field -> all.add(name(record, field)));
  }

  private static String name(RecordShape<?> record, String field) {
    return record.getClass().getName() + " " + field;
  }

  /**
   * Fields of shapes that were met, or of kinds that could have been, and that never stood there.
   */
  Set<String> missing() {
    Set<String> missing = new TreeSet<>(all);
    missing.removeAll(seen);
    return missing;
  }
}
