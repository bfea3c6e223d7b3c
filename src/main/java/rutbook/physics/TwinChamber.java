package rutbook.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A leg whose damper is a closed cartridge: the spring air stands over the outer chamber's oil,
 * {@code V0 = chamber − fill}, {@code A = A_seal − A_rod}. Our model, an estimate.
 *
 * @param chamber volume of the outer chamber at full extension, m³
 * @param fill oil put into it, m³
 * @param sealDiameter outer diameter of the tube where it enters the seal, m
 * @param cartridgeRod diameter of the cartridge's rod, m; zero when it does not displace
 * @param travel full stroke, m
 * @param air trapped and outside
 * @param cartridge the cartridge's own gas and its rod as a piston, when given
 */
public record TwinChamber(
    double chamber,
    double fill,
    double sealDiameter,
    double cartridgeRod,
    double travel,
    TrappedAir air,
    Optional<GasColumn> cartridge)
    implements LegAir {

  public TwinChamber {
    Given.within("outer chamber", chamber, 1e-5, 5e-3);
    Given.within("fill", fill, 0, 5e-3);
    Given.diameter("seal diameter", sealDiameter);
    Given.within("cartridge rod", cartridgeRod, 0, 0.99 * sealDiameter);
    Given.within("travel", travel, 1e-3, 1);
  }

  /**
   * The outer chamber's volume in m³ when no manual gives it: {@code V = fill_most + A L r/(r −
   * 1)}, so that the manual's greatest fill compresses the air r times. Our model, an estimate; a
   * measured chamber makes it exact.
   *
   * @param greatestFill the manual's greatest fill, m³
   * @param pistonArea seal area less the rod's, m²
   * @param travel full stroke, m
   * @param ratio start over end volume at the greatest fill, 1.5 to 15
   */
  public static double estimatedChamber(
      double greatestFill, double pistonArea, double travel, double ratio) {
    Given.within("greatest fill", greatestFill, 0, 5e-3);
    Given.within("piston area", pistonArea, 1e-6, 0.1);
    Given.within("travel", travel, 1e-3, 1);
    Given.within("compression ratio", ratio, 1.5, Room.MOST_RATIO);
    return greatestFill + pistonArea * travel * ratio / (ratio - 1);
  }

  /** The same leg with another fill, m³. */
  public TwinChamber filledWith(double oil) {
    return new TwinChamber(chamber, oil, sealDiameter, cartridgeRod, travel, air, cartridge);
  }

  /** Area in m² that compresses the outer chamber's air. */
  public double pistonArea() {
    return Bore.area(sealDiameter) - Bore.area(cartridgeRod);
  }

  @Override
  public Room room() {
    double start = chamber - fill;
    return new Room(start, start - pistonArea() * travel);
  }

  @Override
  public AirSpring spring() {
    if (room().locked()) {
      throw new IllegalArgumentException(
          "fill " + fill + " m³ leaves " + room().endVolume() + " m³ of air at full stroke");
    }
    List<GasColumn> columns = new ArrayList<>();
    columns.add(new GasColumn(air.inside(), chamber - fill, pistonArea()));
    cartridge.ifPresent(columns::add);
    return new AirSpring(columns, air.outside(), travel);
  }
}
