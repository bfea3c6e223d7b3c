package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;

/** From the least to the most, both allowed, compared exactly. */
public record Range(Amount least, Amount most) {
  public Range {
    if (least.dimension() != most.dimension()) {
      throw new NotebookException(
          Fault.WRONG_UNIT, "limits", most.unit().symbol(), least.unit().symbol());
    }
    Sizes.check("limits", least);
    Sizes.check("limits", most);
    if (least.compareQuantity(most) > 0) {
      throw new NotebookException(Fault.LIMITS_CROSSED, least, most);
    }
  }

  public boolean contains(Amount amount) {
    return amount.compareQuantity(least) >= 0 && amount.compareQuantity(most) <= 0;
  }

  /** The amount itself, or the limit that it passes. */
  public Amount hold(Amount amount) {
    if (amount.compareQuantity(least) < 0) {
      return least;
    }
    return amount.compareQuantity(most) > 0 ? most : amount;
  }

  /** What both ranges allow, if anything. */
  public Optional<Range> within(Range other) {
    Amount low = least.compareQuantity(other.least) >= 0 ? least : other.least;
    Amount high = most.compareQuantity(other.most) <= 0 ? most : other.most;
    return low.compareQuantity(high) <= 0 ? Optional.of(new Range(low, high)) : Optional.empty();
  }
}
