package rutbook.notebook;

/** Whether it comes at the first bump or builds up over later ones. */
public enum When {
  FIRST_BUMP,
  LATER_BUMPS
}
