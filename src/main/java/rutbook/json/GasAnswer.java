package rutbook.json;

import java.util.List;
import rutbook.figures.GasFigures;
import rutbook.notebook.Side;

/** What {@code gas} answers: every body of gas of the bike before and after a move. */
public final class GasAnswer {
  private static final Facts<GasFigures.Both> BOTH =
      Facts.of(GasFigures.Both.class)
          .with("gauge", AmountFacts.AMOUNT, GasFigures.Both::gauge)
          .with("absolute", AmountFacts.AMOUNT, GasFigures.Both::absolute);

  private static final Facts<GasFigures.Moved> MOVED =
      Facts.of(GasFigures.Moved.class)
          .with("before", BOTH, GasFigures.Moved::before)
          .with("after", BOTH, GasFigures.Moved::after)
          .with("gaugeDifference", AmountFacts.STEP, GasFigures.Moved::difference);

  private static final Facts<GasFigures.Line> LINE =
      Facts.of(GasFigures.Line.class)
          .with("body", Texts.TEXT, line -> Words.word(line.body()))
          .ifKnown("setting", SettingFacts.SETTING, GasFigures.Line::setting)
          .ifKnown("leg", Words.of(Side.class), GasFigures.Line::leg)
          .with("moved", FigureFacts.figure(MOVED), GasFigures.Line::moved);

  private record Answer(List<GasFigures.Line> lines) {}

  private static final Facts<Answer> ANSWER =
      Facts.of(Answer.class).list("gases", LINE, Answer::lines);

  private GasAnswer() {}

  public static Reply of(List<GasFigures.Line> lines) {
    return Reply.of("gas", ANSWER, new Answer(lines));
  }
}
