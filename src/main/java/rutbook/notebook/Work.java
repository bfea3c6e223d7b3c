package rutbook.notebook;

/** What it takes to move a setting. */
public enum Work {
  TRACKSIDE,
  PADDOCK,
  BENCH,
  SHOP
}
