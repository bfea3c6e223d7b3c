package rutbook.json;

import java.io.IOException;

/** How one kind of value looks in the file: the two ways of it side by side. */
interface Shape<T> extends Writes<T> {
  /** Reads the value whose first token is the current one; leaves its last token current. */
  T read(In in) throws IOException;
}
