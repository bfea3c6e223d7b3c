package rutbook.json;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * How a fact looks in an answer of the command line: an object whose fields are declared once, in
 * order. What is not known is left out; a list is there even when it is empty.
 */
final class Facts<T> implements Writes<T> {
  private final List<Field<T>> fields = new ArrayList<>();
  private final boolean oneLine;

  private Facts(boolean oneLine) {
    this.oneLine = oneLine;
  }

  private record Field<T>(String name, Predicate<T> isThere, Writes<T> value) {}

  static <T> Facts<T> of(Class<T> type) {
    return new Facts<>(false);
  }

  /** The same on one line, for what is small. */
  static <T> Facts<T> line(Class<T> type) {
    return new Facts<>(true);
  }

  /** A word that is always the same, such as the kind of a finding. */
  Facts<T> word(String name, String word) {
    return with(name, Texts.TEXT, fact -> word);
  }

  <V> Facts<T> with(String name, Writes<? super V> how, Function<? super T, ? extends V> of) {
    return add(name, fact -> true, (fact, out) -> how.write(of.apply(fact), out));
  }

  <V> Facts<T> ifKnown(String name, Writes<? super V> how, Function<? super T, Optional<V>> of) {
    return add(
        name,
        fact -> of.apply(fact).isPresent(),
        (fact, out) -> how.write(of.apply(fact).orElseThrow(), out));
  }

  /** Yes or no. */
  Facts<T> flag(String name, Predicate<? super T> of) {
    return with(name, Numbers.YES_OR_NO, of::test);
  }

  /** A text that is left out when it is empty. */
  Facts<T> note(String name, Function<? super T, String> of) {
    return ifKnown(
        name, Texts.TEXT, fact -> Optional.of(of.apply(fact)).filter(it -> !it.isEmpty()));
  }

  <V> Facts<T> list(String name, Writes<V> element, Function<? super T, List<V>> of) {
    return with(name, listOf(element, false), of);
  }

  /** A list of words or numbers, on one line. */
  <V> Facts<T> shortList(String name, Writes<V> element, Function<? super T, List<V>> of) {
    return with(name, listOf(element, true), of);
  }

  static <V> Writes<List<V>> listOf(Writes<V> element, boolean oneLine) {
    return (elements, out) ->
        out.together(
            oneLine,
            same -> {
              out.generator().writeStartArray();
              for (V each : elements) {
                element.write(each, out);
              }
              out.generator().writeEndArray();
            });
  }

  private Facts<T> add(String name, Predicate<T> isThere, Writes<T> value) {
    if (names().contains(name)) {
      throw new IllegalStateException("field " + name + " twice");
    }
    fields.add(new Field<>(name, isThere, value));
    return this;
  }

  /** Every field, in the order in which they are written. */
  List<String> names() {
    return fields.stream().map(Field::name).toList();
  }

  @Override
  public void write(T fact, Out out) throws IOException {
    out.together(
        oneLine,
        same -> {
          out.generator().writeStartObject();
          writeFields(fact, out);
          out.generator().writeEndObject();
        });
  }

  /** The fields alone, for an object that was begun already. */
  void writeFields(T fact, Out out) throws IOException {
    for (Field<T> field : fields) {
      if (field.isThere().test(fact)) {
        out.field(field.name());
        field.value().write(fact, out);
      }
    }
  }
}
