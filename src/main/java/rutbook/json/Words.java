package rutbook.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;

/** The constants of an enum as small words with dashes: {@code out-from-closed}. */
final class Words<E extends Enum<E>> implements Shape<E> {
  private final List<String> words;
  private final Map<String, E> byWord = new HashMap<>();
  private final Repeats.Making<E> known = this::constant;

  private Words(Class<E> type) {
    words = Stream.of(type.getEnumConstants()).map(Words::word).toList();
    for (E each : type.getEnumConstants()) {
      byWord.put(word(each), each);
    }
  }

  static <E extends Enum<E>> Words<E> of(Class<E> type) {
    return new Words<>(type);
  }

  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Several of them, each at most once, in the order of the enum. */
  static <E extends Enum<E>> Shape<Set<E>> several(Class<E> type) {
    return new Several<>(of(type), type);
  }

  @Override
  public E read(In in) throws IOException {
    return in.repeated(known, Expected.WORD);
  }

  private E constant(In in, String word) {
    E constant = byWord.get(word);
    if (constant == null) {
      throw in.fault(Kind.UNKNOWN_WORD, word, Expected.WORD, words());
    }
    return constant;
  }

  @Override
  public void write(E value, Out out) throws IOException {
    out.text(words.get(value.ordinal()));
  }

  /** Every word there is, in the order of the enum. */
  List<String> words() {
    return words;
  }

  record Several<E extends Enum<E>>(Words<E> words, Class<E> type) implements Shape<Set<E>> {
    @Override
    public Set<E> read(In in) throws IOException {
      in.require(JsonToken.START_ARRAY, Expected.LIST);
      Set<E> found = EnumSet.noneOf(type);
      while (in.next() != JsonToken.END_ARRAY) {
        E each = words.read(in);
        if (!found.add(each)) {
          throw in.fault(Kind.WORD_TWICE, word(each), Expected.WORD, List.of());
        }
      }
      return found;
    }

    @Override
    public void write(Set<E> value, Out out) throws IOException {
      List<E> sorted = value.stream().sorted().toList();
      new ListShape<>(words, true).write(sorted, out);
    }
  }
}
