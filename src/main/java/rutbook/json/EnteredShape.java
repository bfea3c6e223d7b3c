package rutbook.json;

import java.util.Optional;
import rutbook.notebook.Entered;
import rutbook.notebook.Instrument;
import rutbook.notebook.Reading;

/** What was entered at a step of a rebuild. */
final class EnteredShape extends KindsShape<Entered> {
  EnteredShape() {
    add(Entered.Counted.class, new CountedShape());
    add(Entered.Measured.class, new MeasuredShape());
    add(Entered.Ticked.class, new TickedShape());
    add(Entered.Skipped.class, new SkippedShape());
  }

  /** Clicks or turns. */
  private static final class CountedShape extends RecordShape<Entered.Counted> {
    {
      kind("counted");
    }

    private final Field<Reading> reading =
        required("reading", ReadingShape.READING, Entered.Counted::reading);

    @Override
    Entered.Counted make(Got got) {
      return new Entered.Counted(got.get(reading));
    }
  }

  /** A fill, sag or pressure. */
  private static final class MeasuredShape extends RecordShape<Entered.Measured> {
    {
      kind("measured");
    }

    private final Field<Reading> reading =
        required("reading", ReadingShape.READING, Entered.Measured::reading);
    private final Field<Optional<Instrument>> instrument =
        optional("instrument", Words.of(Instrument.class), Entered.Measured::instrument);

    @Override
    Entered.Measured make(Got got) {
      return new Entered.Measured(got.get(reading), got.get(instrument));
    }
  }

  /** Done, with what there is to say of it. */
  private static final class TickedShape extends RecordShape<Entered.Ticked> {
    {
      kind("ticked");
    }

    private final Field<String> note = note("note", Entered.Ticked::note);

    @Override
    Entered.Ticked make(Got got) {
      return new Entered.Ticked(got.get(note));
    }
  }

  /** Left out, with the reason. */
  private static final class SkippedShape extends RecordShape<Entered.Skipped> {
    {
      kind("skipped");
    }

    private final Field<String> why = required("why", Texts.TEXT, Entered.Skipped::why);

    @Override
    Entered.Skipped make(Got got) {
      return new Entered.Skipped(got.get(why));
    }
  }
}
