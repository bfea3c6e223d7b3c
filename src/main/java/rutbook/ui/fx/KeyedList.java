package rutbook.ui.fx;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import javafx.collections.ObservableList;

/** Brings an observable list to new contents without touching what stays: selection survives. */
public final class KeyedList {
  private KeyedList() {}

  /**
   * Replaces the differing stretch between the common beginning and the common end; within it an
   * item with an equal key in the same place is replaced in place.
   */
  public static <T> void update(ObservableList<T> shown, List<T> wanted, Function<T, ?> key) {
    int start = 0;
    int least = Math.min(shown.size(), wanted.size());
    while (start < least && Objects.equals(shown.get(start), wanted.get(start))) {
      start++;
    }
    int end = 0;
    while (end < least - start
        && Objects.equals(shown.get(shown.size() - 1 - end), wanted.get(wanted.size() - 1 - end))) {
      end++;
    }
    List<T> incoming = wanted.subList(start, wanted.size() - end);
    List<T> outgoing = shown.subList(start, shown.size() - end);
    if (incoming.isEmpty() && outgoing.isEmpty()) {
      return;
    }
    if (incoming.size() == outgoing.size() && sameKeys(outgoing, incoming, key)) {
      for (int i = 0; i < incoming.size(); i++) {
        if (!Objects.equals(shown.get(start + i), incoming.get(i))) {
          shown.set(start + i, incoming.get(i));
        }
      }
      return;
    }
    if (incoming.isEmpty()) {
      shown.remove(start, shown.size() - end);
    } else if (outgoing.isEmpty()) {
      shown.addAll(start, incoming);
    } else if (start == 0 && end == 0) {
      shown.setAll(incoming);
    } else {
      shown.remove(start, shown.size() - end);
      shown.addAll(start, incoming);
    }
  }

  private static <T> boolean sameKeys(List<T> a, List<T> b, Function<T, ?> key) {
    Set<Object> seen = new HashSet<>();
    for (int i = 0; i < a.size(); i++) {
      if (!Objects.equals(key.apply(a.get(i)), key.apply(b.get(i)))) {
        return false;
      }
      seen.add(key.apply(a.get(i)));
    }
    return seen.size() == a.size();
  }
}
