package rutbook.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.time.DateTimeException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;
import rutbook.notebook.Lap;
import rutbook.notebook.NotebookException;

/** A lap: {@code "1:32.345"}, or with the reason why it does not count. */
final class LapShape implements Shape<Lap> {
  private static final Pattern FORM = Pattern.compile("(\\d{1,4}):([0-5]\\d)\\.(\\d{3})");
  private static final Shape<Long> TIME =
      new Texts<>(Expected.LAP_TIME, LapShape::millis, LapShape::text);

  private final DroppedShape dropped = new DroppedShape();

  private static long millis(String text) {
    Matcher matcher = FORM.matcher(text);
    if (!matcher.matches()) {
      throw new DateTimeException(text);
    }
    long minutes = Long.parseLong(matcher.group(1));
    return (minutes * 60 + Long.parseLong(matcher.group(2))) * 1000
        + Long.parseLong(matcher.group(3));
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
