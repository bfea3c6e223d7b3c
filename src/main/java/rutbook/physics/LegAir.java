package rutbook.physics;

/** How a leg holds its air: what was filled and measured, before a curve can be drawn. */
public sealed interface LegAir permits OpenBath, TwinChamber, AirLeg {

  /** How much air is left at full stroke; may say that there is none. */
  Room room();

  /**
   * The air spring of this leg.
   *
   * @throws IllegalArgumentException when {@link #room()} is locked: no curve exists
   */
  AirSpring spring();
}
