package rutbook.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.List;
import rutbook.json.JsonFault.Expected;
import rutbook.notebook.Reading;
import rutbook.notebook.Value;
import rutbook.notebook.WhyUnknown;

/**
 * A reading: {@code "14 clicks"}, {@code {"left": "12 clicks", "right": "14 clicks"}}, or {@code
 * {"unknown": "stripped"}} in place of any of them.
 */
final class ReadingShape implements Shape<Reading> {
  private static final ValueShape VALUE = new ValueShape();

  static final ReadingShape READING = new ReadingShape();

  private static final Repeats.Making<Reading> ONE =
      (in, text) -> Reading.of(AmountShape.AMOUNT.read(in));
  private static final Repeats.Making<Value> KNOWN =
      (in, text) -> Value.of(AmountShape.AMOUNT.read(in));

  private final PairShape pair = new PairShape();
  private final UnknownShape unknown = new UnknownShape();

  private ReadingShape() {}

  /** The objects that a reading can be. */
  List<RecordShape<?>> objects() {
    return List.of(pair, unknown);
  }

  @Override
  public Reading read(In in) throws IOException {
    if (in.token() == JsonToken.VALUE_STRING) {
      return in.repeated(ONE, Expected.READING);
    }
    in.require(JsonToken.START_OBJECT, Expected.READING);
    boolean isUnknown = in.next() == JsonToken.FIELD_NAME && in.fieldName().equals("unknown");
    return isUnknown ? new Reading.One(unknown.readFields(in, false)) : pair.readFields(in, false);
  }

  @Override
  public void write(Reading reading, Out out) throws IOException {
    if (reading instanceof Reading.Pair legs) {
      pair.write(legs, out);
    } else {
      VALUE.write(((Reading.One) reading).value(), out);
    }
  }

  private static final class PairShape extends RecordShape<Reading.Pair> {
    private final Field<Value> left = required("left", VALUE, Reading.Pair::left);
    private final Field<Value> right = required("right", VALUE, Reading.Pair::right);

    PairShape() {
      onOneLine();
    }

    @Override
    Reading.Pair make(Got got) {
      return new Reading.Pair(got.get(left), got.get(right));
    }
  }

  private static final class UnknownShape extends RecordShape<Value.Unknown> {
    private final Field<WhyUnknown> why =
        required("unknown", Words.of(WhyUnknown.class), Value.Unknown::why);

    UnknownShape() {
      onOneLine();
    }

    @Override
    Value.Unknown make(Got got) {
      return new Value.Unknown(got.get(why));
    }
  }

  /** One number, or why it is not known. */
  static final class ValueShape implements Shape<Value> {
    private final UnknownShape unknown = new UnknownShape();

    RecordShape<?> object() {
      return unknown;
    }

    @Override
    public Value read(In in) throws IOException {
      if (in.token() == JsonToken.VALUE_STRING) {
        return in.repeated(KNOWN, Expected.READING);
      }
      in.require(JsonToken.START_OBJECT, Expected.READING);
      return unknown.read(in);
    }

    @Override
    public void write(Value value, Out out) throws IOException {
      if (value instanceof Value.Known known) {
        AmountShape.AMOUNT.write(known.amount(), out);
      } else {
        unknown.write((Value.Unknown) value, out);
      }
    }
  }
}
