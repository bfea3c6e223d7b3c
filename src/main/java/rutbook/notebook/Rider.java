package rutbook.notebook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** A rider with weights in gear over time. */
public record Rider(RiderId id, String name, List<Weight> weights) {
  /** From a day on, in full riding gear. */
  public record Weight(LocalDate from, Amount inGear) {
    public Weight {
      Checks.day(from);
      Checks.positive("weight", Optional.of(inGear), Dimension.MASS);
    }
  }

  public Rider {
    name = Checks.name("rider", name);
    weights =
        Checks.unique("weight", weights, Weight::from).stream()
            .sorted(Comparator.comparing(Weight::from))
            .toList();
  }

  public Optional<Amount> weightOn(LocalDate day) {
    Optional<Amount> latest = Optional.empty();
    for (Weight weight : weights) {
      if (!weight.from().isAfter(day)) {
        latest = Optional.of(weight.inGear());
      }
    }
    return latest;
  }
}
