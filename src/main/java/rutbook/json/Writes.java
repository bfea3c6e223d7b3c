package rutbook.json;

import java.io.IOException;

/** How one kind of value is written. */
interface Writes<T> {
  void write(T value, Out out) throws IOException;
}
