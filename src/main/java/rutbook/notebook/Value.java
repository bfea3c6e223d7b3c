package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;

/** One number of a reading, or why it is not known. */
public sealed interface Value {
  record Known(Amount amount) implements Value {}

  record Unknown(WhyUnknown why) implements Value {}

  static Value of(Amount amount) {
    return new Known(amount);
  }

  /** The amount, if it is known. */
  default Optional<Amount> known() {
    return this instanceof Known known ? Optional.of(known.amount()) : Optional.empty();
  }
}
