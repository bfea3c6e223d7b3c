package rutbook.json;

import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import rutbook.notebook.Setup;

/**
 * What was read before and may be read again: a notebook says "12 clicks" many thousand times, and
 * a session starts much as the one before it. One object for each saves time and memory.
 */
final class Repeats {
  private static final int SLOTS = 1 << 13;

  /** Makes something of a text that may come again; each makes one kind of thing. */
  @FunctionalInterface
  interface Making<T> {
    T make(In in, String text) throws IOException;
  }

  private final Making<?>[] makers = new Making<?>[SLOTS];
  private final String[] texts = new String[SLOTS];
  private final Object[] made = new Object[SLOTS];
  private Setup setup = Setup.EMPTY;

  /** What is made of the current text, or was made of the same letters before. */
  @SuppressWarnings("unchecked") // made by this maker
  <T> T of(Making<T> maker, In in) throws IOException {
    JsonParser parser = in.parser();
    char[] letters = parser.getTextCharacters();
    int from = parser.getTextOffset();
    int length = parser.getTextLength();
    int slot = slot(System.identityHashCode(maker), letters, from, length);
    if (makers[slot] == maker && isOf(texts[slot], letters, from, length)) {
      return (T) made[slot];
    }
    String text = parser.getText();
    T fresh = maker.make(in, text);
    makers[slot] = maker;
    texts[slot] = text;
    made[slot] = fresh;
    return fresh;
  }

  private static int slot(int seed, char[] letters, int from, int length) {
    int hash = seed;
    for (int i = from; i < from + length; i++) {
      hash = 31 * hash + letters[i];
    }
    return (hash ^ hash >>> 13) & SLOTS - 1;
  }

  private static boolean isOf(String known, char[] letters, int from, int length) {
    if (known.length() != length) {
      return false;
    }
    for (int i = 0; i < length; i++) {
      if (known.charAt(i) != letters[from + i]) {
        return false;
      }
    }
    return true;
  }

  /** The setup that was read last. */
  Setup setup() {
    return setup;
  }

  void setup(Setup read) {
    setup = read;
  }
}
