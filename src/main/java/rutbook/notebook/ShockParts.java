package rutbook.notebook;

import java.util.List;
import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * How the rear is built, as far as it is known.
 *
 * @param gasPressure of the reservoir, from the least to the most that the manual has
 */
public record ShockParts(
    Optional<Amount> wheelTravel,
    Optional<MotionRatio> motionRatio,
    Optional<Amount> springFreeLength,
    Optional<Amount> collarPitch,
    List<Amount> springsAtHand,
    boolean chargedReservoir,
    String valving,
    Optional<Range> gasPressure) {
  public ShockParts {
    Checks.positive("wheel travel", wheelTravel, Dimension.LENGTH);
    Checks.positive("spring free length", springFreeLength, Dimension.LENGTH);
    Checks.positive("collar pitch", collarPitch, Dimension.LENGTH);
    springsAtHand = Checks.list("spring rate", springsAtHand);
    springsAtHand.forEach(
        rate -> Checks.positive("spring rate", Optional.of(rate), Dimension.SPRING_RATE));
    valving = Checks.note("valving", valving);
    gasPressure.ifPresent(gas -> Checks.dimension("gas pressure", gas.least(), Dimension.PRESSURE));
  }

  /** Without a gas pressure. */
  public ShockParts(
      Optional<Amount> wheelTravel,
      Optional<MotionRatio> motionRatio,
      Optional<Amount> springFreeLength,
      Optional<Amount> collarPitch,
      List<Amount> springsAtHand,
      boolean chargedReservoir,
      String valving) {
    this(
        wheelTravel,
        motionRatio,
        springFreeLength,
        collarPitch,
        springsAtHand,
        chargedReservoir,
        valving,
        Optional.empty());
  }

  public static ShockParts unknown() {
    Optional<Amount> none = Optional.empty();
    return new ShockParts(none, Optional.empty(), none, none, List.of(), true, "");
  }

  /** With the gas pressure that the manual has. */
  public ShockParts withGas(Optional<Range> newGas) {
    return new ShockParts(
        wheelTravel,
        motionRatio,
        springFreeLength,
        collarPitch,
        springsAtHand,
        chargedReservoir,
        valving,
        newGas);
  }
}
