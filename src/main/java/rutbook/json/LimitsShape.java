package rutbook.json;

import rutbook.notebook.ChamberId;
import rutbook.notebook.Limits;
import rutbook.notebook.Range;
import rutbook.units.Amount;

/**
 * What bounds a setting: {@code {"kind": "stops", …}} or {@code {"kind": "fill", "chamber": …}}.
 */
final class LimitsShape extends KindsShape<Limits> {
  LimitsShape() {
    add(Limits.Stops.class, new StopsShape());
    add(Limits.Fill.class, new FillShape());
  }

  /** Its own stops. */
  private static final class StopsShape extends RecordShape<Limits.Stops> {
    {
      kind("stops");
      onOneLine();
    }

    private final Field<Amount> least =
        required("least", AmountShape.AMOUNT, stops -> stops.range().least());
    private final Field<Amount> most =
        required("most", AmountShape.AMOUNT, stops -> stops.range().most());

    @Override
    Limits.Stops make(Got got) {
      return new Limits.Stops(new Range(got.get(least), got.get(most)));
    }
  }

  /** The limits of a chamber. */
  private static final class FillShape extends RecordShape<Limits.Fill> {
    {
      kind("fill");
      onOneLine();
    }

    private final Field<ChamberId> chamber = required("chamber", Ids.CHAMBER, Limits.Fill::chamber);

    @Override
    Limits.Fill make(Got got) {
      return new Limits.Fill(got.get(chamber));
    }
  }
}
