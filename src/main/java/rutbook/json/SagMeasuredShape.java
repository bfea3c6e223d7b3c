package rutbook.json;

import java.util.Optional;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.SagLengths;
import rutbook.units.Amount;

/** Sag of one end. */
final class SagMeasuredShape extends EntryShape<Entry.SagMeasured> {
  private final Field<End> end = required("end", Words.of(End.class), Entry.SagMeasured::end);
  private final Field<Optional<Amount>> race =
      optional("race", AmountShape.AMOUNT, Entry.SagMeasured::race);
  private final Field<Optional<Amount>> free =
      optional("free", AmountShape.AMOUNT, Entry.SagMeasured::free);
  private final Field<Optional<SagLengths>> lengths =
      optional("lengths", new LengthsShape(), Entry.SagMeasured::lengths);
  private final Field<Optional<Amount>> weight =
      optional("weight", AmountShape.AMOUNT, Entry.SagMeasured::weight);
  private final Field<Optional<Amount>> fuel =
      optional("fuel", AmountShape.AMOUNT, Entry.SagMeasured::fuel);

  SagMeasuredShape() {
    super("sag");
  }

  @Override
  Entry.SagMeasured make(Got got) {
    return new Entry.SagMeasured(
        head(got),
        got.get(end),
        got.get(race),
        got.get(free),
        got.get(lengths),
        got.get(weight),
        got.get(fuel));
  }

  /** The three measurements. */
  private static final class LengthsShape extends RecordShape<SagLengths> {
    {
      onOneLine();
    }

    private final Field<Amount> extended =
        required("extended", AmountShape.AMOUNT, SagLengths::extended);
    private final Field<Amount> pushedDown =
        required("pushedDown", AmountShape.AMOUNT, SagLengths::pushedDown);
    private final Field<Amount> liftedUp =
        required("liftedUp", AmountShape.AMOUNT, SagLengths::liftedUp);

    @Override
    SagLengths make(Got got) {
      return new SagLengths(got.get(extended), got.get(pushedDown), got.get(liftedUp));
    }
  }
}
