package rutbook.rebuild;

/** What has to lie ready for a step. */
public enum Tool {
  HOUR_METER,
  AIR_GAUGE,
  SCREWDRIVER,
  BIKE_STAND,
  CAP_WRENCH,
  WRENCHES,
  TORQUE_WRENCH,
  DRAIN_PAN,
  MEASURING_CUP,
  RING_GAUGE,
  SEAL_DRIVER,
  CALLIPER,
  TAPE_MEASURE,
  TYRE_GAUGE,
  GREASE
}
