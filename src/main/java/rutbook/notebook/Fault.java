package rutbook.notebook;

/**
 * What is wrong with a value, for the sentence that {@code words} makes of it. The facts that go
 * with each are listed beside it.
 */
public enum Fault {
  /** text */
  BAD_ID,
  /** field, text */
  BAD_NAME,
  /** field, length, most */
  TEXT_TOO_LONG,
  /** kind, number, least, most */
  OUT_OF_RANGE,
  /** setting, value, limit: chosen below the least */
  BELOW_LEAST,
  /** setting, value, limit: chosen above the most */
  ABOVE_MOST,
  /** setting, value, step: between two clicks */
  OFF_THE_STEPS,
  /** setting, unit, expected */
  WRONG_UNIT,
  /** setting, expected */
  WRONG_LEGS,
  /** least, most */
  LIMITS_CROSSED,
  /** kind, id */
  UNKNOWN_ID,
  /** kind, id */
  TWICE,
  /** kind, id: another datum, unit or carrier needs another id */
  CHANGED_MEANING,
  /** day, least, most */
  BAD_DAY,
  /** setting */
  MISSING_SETTING,
  /** what, number, most: more than a notebook holds */
  TOO_MANY,
  /** kind, most: a number written with more digits than are kept */
  TOO_MANY_DIGITS,
  /** field */
  EMPTY,
  /** bike, day: no sheet in force yet */
  NO_SHEET
}
