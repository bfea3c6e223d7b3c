package rutbook.json;

import rutbook.notebook.Range;
import rutbook.units.Amount;

/** From the least to the most. */
final class RangeShape extends RecordShape<Range> {
  {
    onOneLine();
  }

  private final Field<Amount> least = required("least", AmountShape.AMOUNT, Range::least);
  private final Field<Amount> most = required("most", AmountShape.AMOUNT, Range::most);

  @Override
  Range make(Got got) {
    return new Range(got.get(least), got.get(most));
  }
}
