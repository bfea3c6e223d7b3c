package rutbook.json;

import java.util.Optional;
import rutbook.compare.Explanation;
import rutbook.notebook.End;
import rutbook.units.Amount;

/** What sag and conditions explain, as it stands in the answer of {@code compare}. */
final class ExplainFacts {
  /** What a reader of the answer tells them apart by. */
  enum Kind {
    RIDES_AT,
    STEERS,
    NOT_BY_SETTING,
    OIL_IN_AIR,
    AIR_BLED,
    OTHER_GROUND,
    ROUGHER
  }

  static final Facts<Explanation> EXPLANATION =
      Facts.of(Explanation.class)
          .with("kind", Words.of(Kind.class), ExplainFacts::kind)
          .ifKnown("end", Words.of(End.class), ExplainFacts::end)
          .ifKnown("by", AmountFacts.STEP, ExplainFacts::by)
          .ifKnown("beyondTape", Numbers.YES_OR_NO, ExplainFacts::beyondTape)
          .ifKnown("rake", AmountFacts.STEP, it -> steers(it).map(Explanation.Steers::rake))
          .ifKnown("trail", AmountFacts.STEP, it -> steers(it).map(Explanation.Steers::trail))
          .ifKnown("share", Numbers.FIGURE, ExplainFacts::share)
          .ifKnown("rougher", Numbers.WHOLE, ExplainFacts::rougher);

  private ExplainFacts() {}

  private static Kind kind(Explanation it) {
    if (it instanceof Explanation.RidesAt) {
      return Kind.RIDES_AT;
    } else if (it instanceof Explanation.Steers) {
      return Kind.STEERS;
    } else if (it instanceof Explanation.NotBySetting) {
      return Kind.NOT_BY_SETTING;
    } else if (it instanceof Explanation.OilInAir) {
      return Kind.OIL_IN_AIR;
    } else if (it instanceof Explanation.AirBled) {
      return Kind.AIR_BLED;
    }
    return it instanceof Explanation.OtherGround ? Kind.OTHER_GROUND : Kind.ROUGHER;
  }

  private static Optional<End> end(Explanation it) {
    return it instanceof Explanation.RidesAt rides ? Optional.of(rides.end()) : Optional.empty();
  }

  /** How far sag, air or height are apart. */
  private static Optional<Amount> by(Explanation it) {
    if (it instanceof Explanation.RidesAt rides) {
      return Optional.of(rides.by());
    } else if (it instanceof Explanation.NotBySetting not) {
      return Optional.of(not.by());
    } else if (it instanceof Explanation.OilInAir oil) {
      return Optional.of(oil.air());
    }
    return it instanceof Explanation.AirBled air ? Optional.of(air.higher()) : Optional.empty();
  }

  private static Optional<Boolean> beyondTape(Explanation it) {
    return it instanceof Explanation.RidesAt rides
        ? Optional.of(rides.beyondTape())
        : Optional.empty();
  }

  private static Optional<Explanation.Steers> steers(Explanation it) {
    return it instanceof Explanation.Steers steers ? Optional.of(steers) : Optional.empty();
  }

  private static Optional<Double> share(Explanation it) {
    if (it instanceof Explanation.OilInAir oil) {
      return Optional.of(oil.share());
    }
    return it instanceof Explanation.AirBled air ? Optional.of(air.share()) : Optional.empty();
  }

  private static Optional<Integer> rougher(Explanation it) {
    if (it instanceof Explanation.Rougher rougher) {
      return Optional.of(rougher.by());
    }
    return it instanceof Explanation.OtherGround ground
        ? RideFacts.whole(ground.rougher())
        : Optional.empty();
  }
}
