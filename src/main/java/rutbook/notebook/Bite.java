package rutbook.notebook;

/** Whether the wheel hits and deflects, or hits and sinks. */
public enum Bite {
  DEFLECTS,
  SINKS
}
