package rutbook.notebook;

/** What is rebuilt. */
public enum Scope {
  FORK,
  SHOCK,
  BOTH
}
