package rutbook.share;

/** How a proposal of the coach stands to what is on the bike by now. */
public enum Standing {
  /** The setting is as it was handed over: the proposal means what the coach meant. */
  UNCHANGED,
  /** The setting was moved meanwhile, elsewhere than the coach suggests: the rider decides. */
  CHANGED,
  /** The setting already stands where the coach suggests. */
  ALREADY_SO,
  /** The proposal lies outside the limits of today's sheet: it is held at the limit. */
  HELD,
  /** The setting was on the bike's sheet once and is not today. */
  GONE,
  /** The bike never had such a setting, or counts it otherwise. */
  NOT_YOURS,
  /** The same proposal was taken back before. */
  TAKEN_BEFORE;

  /** Whether the proposal can be followed, if only as far as the limit. */
  public boolean canBeFollowed() {
    return this == UNCHANGED || this == CHANGED || this == HELD;
  }

  /** Whether the proposal is kept in the notebook when the file is taken back. */
  public boolean isKept() {
    return this != NOT_YOURS && this != TAKEN_BEFORE;
  }
}
