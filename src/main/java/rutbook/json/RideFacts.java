package rutbook.json;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.notebook.Conditions;
import rutbook.notebook.Ground;
import rutbook.notebook.Lap;
import rutbook.notebook.Moisture;
import rutbook.notebook.Ready;
import rutbook.notebook.TravelUsed;

/** What an answer says about a ride: conditions, laps in seconds, travel used. */
final class RideFacts {
  static final Facts<Conditions> CONDITIONS =
      Facts.line(Conditions.class)
          .ifKnown("ground", Words.of(Ground.class), Conditions::ground)
          .ifKnown("moisture", Words.of(Moisture.class), Conditions::moisture)
          .ifKnown("roughness", Numbers.WHOLE, it -> whole(it.roughness()))
          .ifKnown("air", AmountFacts.AMOUNT, Conditions::air)
          .shortList("ready", Words.of(Ready.class), it -> it.ready().stream().sorted().toList());

  static final Facts<Lap> LAP =
      Facts.line(Lap.class)
          .with("seconds", Numbers.DECIMAL, lap -> BigDecimal.valueOf(lap.millis(), 3))
          .ifKnown("dropped", Texts.TEXT, Lap::dropped);

  static final Facts<TravelUsed> TRAVEL =
      Facts.line(TravelUsed.class)
          .ifKnown("front", AmountFacts.AMOUNT, TravelUsed::front)
          .ifKnown("rear", AmountFacts.AMOUNT, TravelUsed::rear);

  private RideFacts() {}

  static Optional<Integer> whole(OptionalInt number) {
    return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
  }
}
