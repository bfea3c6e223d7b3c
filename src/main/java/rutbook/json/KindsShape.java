package rutbook.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;

/**
 * One of several records, told apart by their field {@code kind}. It is written first, and read
 * wherever it stands.
 */
class KindsShape<T> implements Shape<T> {
  private final Map<String, RecordShape<? extends T>> byKind = new LinkedHashMap<>();
  private final Map<Class<?>, RecordShape<? extends T>> byType = new HashMap<>();

  private final Repeats.Making<RecordShape<? extends T>> kind = this::known;

  final <S extends T> void add(Class<S> type, RecordShape<S> shape) {
    byKind.put(shape.kind().orElseThrow(), shape);
    byType.put(type, shape);
  }

  final Map<String, RecordShape<? extends T>> kinds() {
    return Map.copyOf(byKind);
  }

  @Override
  public final T read(In in) throws IOException {
    in.require(JsonToken.START_OBJECT, Expected.OBJECT);
    if (in.next() == JsonToken.FIELD_NAME && in.fieldName().equals(RecordShape.KIND)) {
      in.next();
      RecordShape<? extends T> shape = in.repeated(kind, Expected.WORD);
      in.next();
      return shape.readFields(in, true);
    }
    Optional<String> kind =
        in.atField() ? in.ahead(RecordShape.KIND, Expected.WORD) : Optional.empty();
    if (kind.isEmpty()) {
      List<String> missing = List.of(RecordShape.KIND);
      throw in.fault(Kind.MISSING_FIELD, "", Expected.FIELD, missing);
    }
    return known(in, kind.get()).readFields(in, false);
  }

  private RecordShape<? extends T> known(In in, String kind) {
    RecordShape<? extends T> shape = byKind.get(kind);
    if (shape == null) {
      throw in.fault(Kind.UNKNOWN_WORD, kind, Expected.WORD, List.copyOf(byKind.keySet()));
    }
    return shape;
  }

  @Override
  @SuppressWarnings("unchecked") // the map's key is the type of its shape
  public final void write(T value, Out out) throws IOException {
    ((RecordShape<T>) byType.get(value.getClass())).write(value, out);
  }
}
