package rutbook.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;

/** A list of values of one shape, on one line where they are small. */
record ListShape<T>(Shape<T> element, boolean oneLine) implements Shape<List<T>> {
  ListShape(Shape<T> element) {
    this(element, false);
  }

  @Override
  public List<T> read(In in) throws IOException {
    in.require(JsonToken.START_ARRAY, Expected.LIST);
    List<T> elements = new ArrayList<>();
    while (in.next() != JsonToken.END_ARRAY) {
      if (elements.size() == ReadingLimits.ELEMENTS) {
        List<String> most = List.of(String.valueOf(ReadingLimits.ELEMENTS));
        throw in.fault(Kind.TOO_MANY, "", Expected.LIST, most);
      }
      elements.add(element.read(in));
    }
    return elements;
  }

  @Override
  public void write(List<T> elements, Out out) throws IOException {
    out.together(
        oneLine,
        same -> {
          out.generator().writeStartArray();
          for (T each : elements) {
            element.write(each, out);
          }
          out.generator().writeEndArray();
        });
  }
}
