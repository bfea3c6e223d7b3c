package rutbook.notebook;

import java.util.List;
import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** How the rear is built, as far as it is known. */
public record ShockParts(
    Optional<Amount> wheelTravel,
    Optional<MotionRatio> motionRatio,
    Optional<Amount> springFreeLength,
    Optional<Amount> collarPitch,
    List<Amount> springsAtHand,
    boolean chargedReservoir,
    String valving) {
  public ShockParts {
    Checks.positive("wheel travel", wheelTravel, Dimension.LENGTH);
    Checks.positive("spring free length", springFreeLength, Dimension.LENGTH);
    Checks.positive("collar pitch", collarPitch, Dimension.LENGTH);
    springsAtHand = Checks.list("spring rate", springsAtHand);
    springsAtHand.forEach(
        rate -> Checks.positive("spring rate", Optional.of(rate), Dimension.SPRING_RATE));
    valving = Checks.note("valving", valving);
  }

  public static ShockParts unknown() {
    Optional<Amount> none = Optional.empty();
    return new ShockParts(none, Optional.empty(), none, none, List.of(), true, "");
  }
}
