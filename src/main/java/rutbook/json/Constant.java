package rutbook.json;

import java.io.IOException;
import java.util.List;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;

/** A word that is always the same. */
record Constant(String word) implements Shape<String> {
  @Override
  public String read(In in) throws IOException {
    String found = in.text(Expected.WORD);
    if (!found.equals(word)) {
      throw in.fault(Kind.UNKNOWN_WORD, found, Expected.WORD, List.of(word));
    }
    return word;
  }

  @Override
  public void write(String value, Out out) throws IOException {
    out.text(word);
  }
}
