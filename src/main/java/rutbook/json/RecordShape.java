package rutbook.json;

import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;
import rutbook.notebook.NotebookException;

/**
 * The shape of a record: an object with named fields, each declared once and used both for reading
 * and for writing. What is left out is what it usually is; what has no usual value must be there.
 */
abstract class RecordShape<T> implements Shape<T> {
  static final String KIND = "kind";

  private final List<Field<?>> fields = new ArrayList<>();
  private final Map<String, Field<?>> byName = new HashMap<>();
  private Optional<String> kind = Optional.empty();
  private boolean oneLine;

  RecordShape() {}

  /** One of several kinds, with the word that says which: always the first field. */
  RecordShape(String kind) {
    kind(kind);
  }

  /** A field of the record. */
  final class Field<V> {
    private final String name;
    private final int index;
    private final Shape<V> shape;
    private final Function<T, V> of;
    private final Optional<V> usual;

    private Field(String name, Shape<V> shape, Function<T, V> of, Optional<V> usual) {
      this.name = name;
      this.index = fields.size();
      this.shape = shape;
      this.of = of;
      this.usual = usual;
      fields.add(this);
      if (byName.put(name, this) != null) {
        throw new IllegalStateException("field " + name + " twice");
      }
    }

    private void write(T record, Out out) throws IOException {
      V value = of.apply(record);
      if (usual.isPresent() && usual.get().equals(value)) {
        return;
      }
      out.field(name);
      shape.write(value, out);
    }
  }

  /** What was read of one record, by field. */
  final class Got {
    private final Object[] values = new Object[fields.size()];

    @SuppressWarnings("unchecked") // the field's own shape put it there
    <V> V get(Field<V> field) {
      return (V) values[field.index];
    }
  }

  /** Makes the record from what was read. */
  abstract T make(Got got);

  final void onOneLine() {
    oneLine = true;
  }

  /** Says which of several kinds this is; always the first field that is written. */
  final void kind(String word) {
    if (!fields.isEmpty()) {
      throw new IllegalStateException("kind after " + fieldNames());
    }
    kind = Optional.of(word);
    required(KIND, new Constant(word), record -> word);
  }

  final Optional<String> kind() {
    return kind;
  }

  final <V> Field<V> required(String name, Shape<V> shape, Function<T, V> of) {
    return new Field<>(name, shape, of, Optional.empty());
  }

  /** A field that is left out when it is what it usually is. */
  final <V> Field<V> usually(V usual, String name, Shape<V> shape, Function<T, V> of) {
    return new Field<>(name, shape, of, Optional.of(usual));
  }

  final <V> Field<Optional<V>> optional(String name, Shape<V> shape, Function<T, Optional<V>> of) {
    return usually(Optional.empty(), name, new PresentShape<>(shape), of);
  }

  /** A list that is left out when it is empty. */
  final <V> Field<List<V>> list(String name, Shape<V> element, Function<T, List<V>> of) {
    return usually(List.of(), name, new ListShape<>(element), of);
  }

  /** A text that is left out when it is empty. */
  final Field<String> note(String name, Function<T, String> of) {
    return usually("", name, Texts.TEXT, of);
  }

  @Override
  public final T read(In in) throws IOException {
    in.require(JsonToken.START_OBJECT, Expected.OBJECT);
    in.next();
    return readFields(in, false);
  }

  /** Reads on from the first field; the kind may have been read before. */
  final T readFields(In in, boolean kindRead) throws IOException {
    JsonStreamContext began = in.parser().getParsingContext();
    Got got = new Got();
    if (kindRead) {
      got.values[0] = kind.orElseThrow();
    }
    for (int likely = kindRead ? 1 : 0; in.atField(); in.next()) {
      likely = readField(in, got, likely) + 1;
    }
    for (Field<?> field : fields) {
      if (got.values[field.index] == null) {
        if (field.usual.isEmpty()) {
          throw in.faultOf(began, Kind.MISSING_FIELD, Expected.FIELD, List.of(field.name), null);
        }
        got.values[field.index] = field.usual.get();
      }
    }
    try {
      return make(got);
    } catch (NotebookException fault) {
      throw in.faultOf(began, Kind.NOTEBOOK, Expected.NOTHING, List.of(), fault);
    }
  }

  /** Reads a field, most likely the one that is written next; returns its place. */
  private int readField(In in, Got got, int likely) throws IOException {
    String name = in.fieldName();
    boolean asWritten = likely < fields.size() && fields.get(likely).name.equals(name);
    Field<?> field = asWritten ? fields.get(likely) : byName.get(name);
    if (field == null) {
      throw in.fault(Kind.UNKNOWN_FIELD, name, Expected.FIELD, fieldNames());
    }
    if (got.values[field.index] != null) {
      throw in.fault(Kind.FIELD_TWICE, name, Expected.FIELD, List.of());
    }
    in.next();
    got.values[field.index] = field.shape.read(in);
    return field.index;
  }

  /** Every field, in the order in which they are written. */
  final List<String> fieldNames() {
    return fields.stream().map(field -> field.name).toList();
  }

  /** How each field looks, by its name. */
  final Map<String, Shape<?>> shapes() {
    Map<String, Shape<?>> shapes = new LinkedHashMap<>();
    fields.forEach(field -> shapes.put(field.name, field.shape));
    return shapes;
  }

  final List<String> requiredNames() {
    return fields.stream().filter(field -> field.usual.isEmpty()).map(each -> each.name).toList();
  }

  @Override
  public final void write(T record, Out out) throws IOException {
    out.together(
        oneLine,
        same -> {
          out.generator().writeStartObject();
          for (Field<?> field : fields) {
            field.write(record, out);
          }
          out.generator().writeEndObject();
        });
  }
}
