package rutbook.notebook;

/** A fastener that the torque table can name. */
public enum Fastener {
  REBOUND_ADJUSTER_LOCK_NUT,
  CENTRE_BOLT,
  FORK_CAP,
  UPPER_CLAMP,
  LOWER_CLAMP,
  AXLE_NUT,
  AXLE_PINCH_BOLTS,
  BRAKE_CALIPER,
  SHOCK_UPPER,
  SHOCK_LOWER,
  LINKAGE,
  REAR_AXLE_NUT,
  OTHER
}
