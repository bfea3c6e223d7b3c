package rutbook.rebuild;

/** One thing to do on the way back to the baseline. */
public record ReturnItem(Action action, SettingReturn what) {
  /** Why the setting is touched here. */
  public enum Action {
    /** Found outside its limits: put right before anything else. */
    PUT_RIGHT,
    /** Not known: counted to closed, or measured, before it can be moved. */
    RE_REFERENCE,
    /** Moved to its target. */
    MOVE
  }
}
