package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** A place that holds oil, with the limits of its fill; the limits come from the service manual. */
public record Chamber(
    ChamberId id,
    String name,
    Carrier carrier,
    Measure measure,
    Range limits,
    Optional<Amount> nominal,
    Optional<ChamberVolume> volume) {
  public Chamber {
    name = Checks.name("chamber", name);
    Dimension expected = measure == Measure.VOLUME ? Dimension.VOLUME : Dimension.LENGTH;
    Checks.dimension("fill", limits.least(), expected);
    if (limits.least().value().signum() <= 0) {
      throw new NotebookException(Fault.OUT_OF_RANGE, "fill", limits.least(), "> 0", "");
    }
    nominal.ifPresent(
        amount -> {
          Checks.dimension("fill", amount, expected);
          if (!limits.contains(amount)) {
            throw new NotebookException(
                Fault.OUT_OF_RANGE, "nominal fill", amount, limits.least(), limits.most());
          }
        });
  }
}
