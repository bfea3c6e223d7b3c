package rutbook.notebook;

import rutbook.units.Amount;

/** What became of a proposal. */
public sealed interface Answer {
  record Open() implements Answer {}

  record Accepted(MotoId moto) implements Answer {}

  /** Taken before that moto, ridden, and kept. */
  record Kept(MotoId moto) implements Answer {}

  /** Taken before that moto, ridden, and put back to where it was. */
  record PutBack(MotoId moto) implements Answer {}

  record Declined(String word) implements Answer {
    public Declined {
      word = Checks.note("word", word);
    }
  }

  /** It lies beyond a limit of today's sheet. */
  record Held(Amount limit) implements Answer {}
}
