package rutbook.rebuild;

/** What must be said at a step before it is begun. */
public enum Caution {
  /** Torque, fill and interval values are the service manual's; no general number is safe. */
  MANUAL_RULES,
  /** Air pressure is released before anything is loosened, in the manual's order. */
  RELEASE_AIR_FIRST,
  /** A gas-charged reservoir is never opened: licensed shop. */
  NEVER_OPEN_GAS,
  /** Springs and caps are under load. */
  UNDER_LOAD,
  /** Never force an adjuster past its seat. */
  NEVER_FORCE,
  /** The bike stands on a stable stand. */
  STABLE_STAND,
  /** Brake lever pumped firm and wheel turning freely before riding. */
  BRAKE_AND_WHEEL,
  /** First ride slow, in a safe place, then fasteners again. */
  FIRST_RIDE_SLOW,
  /** Leaking, loose, bent or knocking ends the ride. */
  ENDS_THE_RIDE,
  /** One thing at a time. */
  ONE_THING,
  /** Local rules and licensed practice come first. */
  LICENSED_FIRST,
  /** The sheet has no torque for this: the manual has. */
  TORQUE_NOT_ON_SHEET,
  /** The sheet does not say which side is pinched first: the manual does. */
  SIDE_NOT_ON_SHEET
}
