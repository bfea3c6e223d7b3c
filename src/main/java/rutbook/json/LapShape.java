package rutbook.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.time.DateTimeException;
import java.util.List;
import java.util.Optional;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;
import rutbook.notebook.Lap;
import rutbook.notebook.NotebookException;

/** A lap: {@code "1:32.345"}, or with the reason why it does not count. */
final class LapShape implements Shape<Lap> {
  private static final Shape<Long> TIME =
      new Texts<>(Expected.LAP_TIME, LapShape::millis, LapShape::text);

  private final DroppedShape dropped = new DroppedShape();

  /** By hand: a notebook has more laps than anything else. */
  private static long millis(String text) {
    int colon = text.length() - 7;
    if (colon < 1 || colon > 4 || text.charAt(colon) != ':' || text.charAt(colon + 3) != '.') {
      throw new DateTimeException(text);
    }
    int seconds = number(text, colon + 1, colon + 3);
    if (seconds > 59) {
      throw new DateTimeException(text);
    }
    long minutes = number(text, 0, colon);
    return (minutes * 60 + seconds) * 1000 + number(text, colon + 4, text.length());
  }

  private static int number(String text, int from, int to) {
    int number = 0;
    for (int i = from; i < to; i++) {
      char digit = text.charAt(i);
      if (digit < '0' || digit > '9') {
        throw new DateTimeException(text);
      }
      number = 10 * number + digit - '0';
    }
    return number;
  }

  private static String text(long millis) {
    long seconds = millis / 1000;
    return seconds / 60 + ":" + padded(seconds % 60, 2) + "." + padded(millis % 1000, 3);
  }

  private static String padded(long number, int digits) {
    String text = Long.toString(number);
    return "0".repeat(digits - text.length()) + text;
  }

  RecordShape<Lap> droppedLap() {
    return dropped;
  }

  @Override
  public Lap read(In in) throws IOException {
    if (in.token() == JsonToken.START_OBJECT) {
      return dropped.read(in);
    }
    long millis = TIME.read(in);
    try {
      return Lap.of(millis);
    } catch (NotebookException fault) {
      throw in.fault(Kind.NOTEBOOK, text(millis), Expected.LAP_TIME, List.of(), fault);
    }
  }

  @Override
  public void write(Lap lap, Out out) throws IOException {
    if (lap.counts()) {
      TIME.write(lap.millis(), out);
    } else {
      dropped.write(lap, out);
    }
  }

  private static final class DroppedShape extends RecordShape<Lap> {
    private final Field<Long> time = required("time", TIME, Lap::millis);
    private final Field<String> why =
        required("dropped", Texts.TEXT, lap -> lap.dropped().orElseThrow());

    DroppedShape() {
      onOneLine();
    }

    @Override
    Lap make(Got got) {
      return new Lap(got.get(time), Optional.of(got.get(why)));
    }
  }
}
