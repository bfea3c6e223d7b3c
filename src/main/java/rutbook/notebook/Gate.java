package rutbook.notebook;

/** What has to come before any clicker. */
public enum Gate {
  FAULT_OR_CRASH,
  READINGS_IN_DOUBT,
  NOT_CHECKED_AFTER,
  PRESSURES_NOT_CHECKED,
  SERVICE_DUE,
  SAG_OUT,
  FORK_NOT_BLED,
  AXLE_NOT_ALIGNED
}
