package rutbook.json;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.function.Function;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;
import rutbook.notebook.NotebookException;

/** Values that are a text in the file. */
record Texts<T>(Expected expected, Function<String, T> parse, Function<T, String> print)
    implements Shape<T> {
  static final Shape<String> TEXT =
      new Texts<>(Expected.TEXT, Function.identity(), Function.identity());
  static final Shape<LocalDate> DAY =
      new Texts<>(Expected.DAY, LocalDate::parse, LocalDate::toString);
  static final Shape<LocalTime> TIME =
      new Texts<>(Expected.TIME, LocalTime::parse, LocalTime::toString);
  static final Shape<Instant> MOMENT =
      new Texts<>(Expected.MOMENT, Instant::parse, Instant::toString);

  @Override
  public T read(In in) throws IOException {
    String text = in.text(expected);
    try {
      return parse.apply(text);
    } catch (NotebookException fault) {
      throw in.fault(Kind.NOTEBOOK, text, expected, List.of(), fault);
    } catch (DateTimeException fault) {
      throw in.fault(Kind.BAD_VALUE, text, expected, List.of(), fault);
    }
  }

  @Override
  public void write(T value, Out out) throws IOException {
    out.text(print.apply(value));
  }
}
