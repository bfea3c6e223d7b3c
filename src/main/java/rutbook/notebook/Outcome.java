package rutbook.notebook;

/** How a rebuild ended, or that it has not. */
public enum Outcome {
  UNDER_WAY,
  AT_THE_SHOP,
  BACK,
  NOT_BACK,
  GIVEN_UP
}
