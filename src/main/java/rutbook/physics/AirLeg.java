package rutbook.physics;

import java.util.List;

/**
 * A leg sprung by air alone, with the negative chamber that pulls it together at full extension:
 * without that chamber about 1 kN would stand there, so no curve is drawn without its data. Our
 * model, an estimate.
 *
 * @param positive the main chamber, its area above zero
 * @param negative the negative chamber: it grows with stroke, its area below zero
 * @param outside absolute pressure of the air outside, Pa
 * @param travel full stroke, m
 */
public record AirLeg(GasColumn positive, GasColumn negative, double outside, double travel)
    implements LegAir {

  public AirLeg {
    Given.within("area of the main chamber", positive.area(), 1e-6, 0.1);
    Given.within("area of the negative chamber", negative.area(), -0.1, -1e-6);
    Given.pressure("outside pressure", outside);
    Given.within("travel", travel, 1e-3, 1);
  }

  /**
   * A chamber pumped to a gauge pressure in Pa where the air outside has {@code outside} Pa.
   *
   * @param volume at full extension, m³
   * @param area m², negative when it grows with stroke
   */
  public static GasColumn pumped(double gauge, double outside, double volume, double area) {
    Given.within("gauge pressure", gauge, 0, 4e7);
    return new GasColumn(gauge + Given.pressure("outside pressure", outside), volume, area);
  }

  /**
   * A negative chamber that fills itself through a port from the main chamber: both pressures are
   * equal at the port's stroke, slowly (constant temperature).
   *
   * @param positive the main chamber as pumped
   * @param volume of the negative chamber at full extension, m³
   * @param area its piston's size, m², above zero
   * @param port stroke at which the port joins them, m
   */
  public static GasColumn selfFilling(GasColumn positive, double volume, double area, double port) {
    Given.within("area of the negative chamber", area, 1e-6, 0.1);
    double atPort = positive.pressureAt(port, Polytropic.SLOW);
    double grown = (volume + area * port) / Given.within("negative volume", volume, 1e-7, 1e-2);
    return new GasColumn(atPort * grown, volume, -area);
  }

  @Override
  public Room room() {
    return new Room(positive.volume(), positive.volumeAt(travel));
  }

  @Override
  public AirSpring spring() {
    return new AirSpring(List.of(positive, negative), outside, travel);
  }
}
