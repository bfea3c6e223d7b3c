package rutbook.json;

import rutbook.notebook.Answer;
import rutbook.notebook.MotoId;
import rutbook.units.Amount;

/** What became of a proposal. */
final class AnswerShape extends KindsShape<Answer> {
  AnswerShape() {
    add(Answer.Open.class, new OpenShape());
    add(Answer.Accepted.class, new AcceptedShape());
    add(Answer.Kept.class, new KeptShape());
    add(Answer.PutBack.class, new PutBackShape());
    add(Answer.Declined.class, new DeclinedShape());
    add(Answer.Held.class, new HeldShape());
  }

  /** Not answered yet. */
  private static final class OpenShape extends RecordShape<Answer.Open> {
    {
      kind("open");
      onOneLine();
    }

    @Override
    Answer.Open make(Got got) {
      return new Answer.Open();
    }
  }

  /** Taken, before a moto. */
  private static final class AcceptedShape extends RecordShape<Answer.Accepted> {
    {
      kind("accepted");
      onOneLine();
    }

    private final Field<MotoId> moto = required("moto", Ids.MOTO, Answer.Accepted::moto);

    @Override
    Answer.Accepted make(Got got) {
      return new Answer.Accepted(got.get(moto));
    }
  }

  /** Ridden and kept. */
  private static final class KeptShape extends RecordShape<Answer.Kept> {
    {
      kind("kept");
      onOneLine();
    }

    private final Field<MotoId> moto = required("moto", Ids.MOTO, Answer.Kept::moto);

    @Override
    Answer.Kept make(Got got) {
      return new Answer.Kept(got.get(moto));
    }
  }

  /** Ridden and put back. */
  private static final class PutBackShape extends RecordShape<Answer.PutBack> {
    {
      kind("put-back");
      onOneLine();
    }

    private final Field<MotoId> moto = required("moto", Ids.MOTO, Answer.PutBack::moto);

    @Override
    Answer.PutBack make(Got got) {
      return new Answer.PutBack(got.get(moto));
    }
  }

  /** Refused, with a word about it. */
  private static final class DeclinedShape extends RecordShape<Answer.Declined> {
    {
      kind("declined");
      onOneLine();
    }

    private final Field<String> word = note("word", Answer.Declined::word);

    @Override
    Answer.Declined make(Got got) {
      return new Answer.Declined(got.get(word));
    }
  }

  /** Beyond a limit. */
  private static final class HeldShape extends RecordShape<Answer.Held> {
    {
      kind("held");
      onOneLine();
    }

    private final Field<Amount> limit = required("limit", AmountShape.AMOUNT, Answer.Held::limit);

    @Override
    Answer.Held make(Got got) {
      return new Answer.Held(got.get(limit));
    }
  }
}
