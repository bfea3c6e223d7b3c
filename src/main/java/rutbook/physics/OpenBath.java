package rutbook.physics;

import java.util.List;

/**
 * A leg with one bath of oil and the air above it: {@code V(x) = A_tube h_gap − steel + A_seal (L −
 * x)}. Our model, an estimate.
 *
 * @param tubeBore inner diameter of the tube in which the level was measured, m
 * @param sealDiameter outer diameter of the tube where it enters the seal (not the damper rod), m
 * @param oilGap from the top of the tube to the oil, spring out and fork collapsed, m: less is more
 *     oil
 * @param steel volume of the spring's steel that the measurement left out, m³ (about 7e-5); zero
 *     when the level was measured with the spring in
 * @param travel full stroke, m
 * @param air trapped and outside
 */
public record OpenBath(
    double tubeBore,
    double sealDiameter,
    double oilGap,
    double steel,
    double travel,
    TrappedAir air)
    implements LegAir {

  public OpenBath {
    Given.diameter("tube bore", tubeBore);
    Given.diameter("seal diameter", sealDiameter);
    Given.within("oil gap", oilGap, 0, 1);
    Given.within("steel in the oil", steel, 0, 1e-3);
    Given.within("travel", travel, 1e-3, 1);
    column(tubeBore, sealDiameter, oilGap, steel, travel);
  }

  /** The same leg with another oil gap, m. */
  public OpenBath filledTo(double gap) {
    return new OpenBath(tubeBore, sealDiameter, gap, steel, travel, air);
  }

  @Override
  public Room room() {
    return column(tubeBore, sealDiameter, oilGap, steel, travel);
  }

  @Override
  public AirSpring spring() {
    return new AirSpring(
        List.of(new GasColumn(air.inside(), room().startVolume(), Bore.area(sealDiameter))),
        air.outside(),
        travel);
  }

  private static Room column(double bore, double seal, double gap, double steel, double travel) {
    double end = Bore.area(bore) * gap - steel;
    return new Room(end + Bore.area(seal) * travel, end);
  }
}
