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
  static final Shape<LocalDate> DAY = new Texts<>(Expected.DAY, Texts::day, LocalDate::toString);
  static final Shape<LocalTime> TIME =
      new Texts<>(Expected.TIME, LocalTime::parse, LocalTime::toString);
  static final Shape<Instant> MOMENT =
      new Texts<>(Expected.MOMENT, Instant::parse, Instant::toString);

  /** By hand where it is written as usual: every entry has one. */
  private static LocalDate day(String text) {
    if (text.length() != 10 || text.charAt(4) != '-' || text.charAt(7) != '-') {
      return LocalDate.parse(text);
    }
    int digits = 0;
    for (int i = 0; i < text.length(); i++) {
      char each = text.charAt(i);
      if (each >= '0' && each <= '9') {
        digits = 10 * digits + each - '0';
      } else if (i != 4 && i != 7) {
        return LocalDate.parse(text);
      }
    }
    return LocalDate.of(digits / 10_000, digits / 100 % 100, digits % 100);
  }

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
