package rutbook.share;

/** Why a setup cannot be handed over or taken back; the facts that go with each beside it. */
public enum ShareFault {
  /** nothing: no setup was chosen */
  NOTHING_CHOSEN,
  /** most: more setups than one file takes */
  TOO_MANY_SETUPS,
  /** day, rider, other rider: sessions of two riders in one file */
  TWO_RIDERS,
  /** nothing: the notebook has no rider, and nobody said who hands over */
  NO_RIDER,
  /** rider, bike: it was handed over from another notebook */
  OTHER_NOTEBOOK,
  /** day: handed over from this notebook, but its record is no longer there */
  NO_RECORD,
  /** rider, day: the coach has not said anything yet */
  NOTHING_SAID,
  /** coach, day: all of it was taken back before */
  TAKEN_BEFORE,
  /** bike, day: there is no sheet on the day it is taken back */
  NO_SHEET
}
