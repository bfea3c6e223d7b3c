package rutbook.json;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** One of several facts, each written by its own type; their first field says which it is. */
final class FactKinds<T> implements Writes<T> {
  private final Map<Class<?>, Facts<? extends T>> byType = new LinkedHashMap<>();

  <S extends T> FactKinds<T> add(Class<S> type, Facts<S> facts) {
    byType.put(type, facts);
    return this;
  }

  Map<Class<?>, Facts<? extends T>> byType() {
    return Map.copyOf(byType);
  }

  @Override
  @SuppressWarnings("unchecked") // the map's key is the type of its facts
  public void write(T value, Out out) throws IOException {
    Facts<? extends T> facts = byType.get(value.getClass());
    if (facts == null) {
      throw new IllegalStateException("no facts for " + value.getClass());
    }
    ((Facts<T>) facts).write(value, out);
  }
}
