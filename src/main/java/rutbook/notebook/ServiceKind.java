package rutbook.notebook;

/** What a service item is about, so that a job knows which items it settles. */
public enum ServiceKind {
  FORK_OIL,
  FORK_SEALS,
  SHOCK_OIL,
  LINKAGE,
  HEAD_BEARINGS,
  OTHER
}
