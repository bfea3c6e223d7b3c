package rutbook.json;

import rutbook.figures.Figure;
import rutbook.figures.SteeringSweep;

/** What {@code steering} answers: a row for every height of the fork that the sheet allows. */
public final class SteeringAnswer {
  private static final Facts<SteeringSweep.Row> ROW =
      Facts.of(SteeringSweep.Row.class)
          .with("tubeAboveClamp", AmountFacts.AMOUNT, SteeringSweep.Row::tube)
          .with("rake", AmountFacts.AMOUNT, row -> row.steering().rake())
          .with("trail", AmountFacts.AMOUNT, row -> row.steering().trail())
          .with("normalTrail", AmountFacts.AMOUNT, row -> row.steering().normalTrail())
          .with("noseDown", AmountFacts.AMOUNT, row -> row.steering().noseDown())
          .with("wheelbase", AmountFacts.AMOUNT, row -> row.steering().wheelbase());

  private static final Facts<SteeringSweep> SWEEP =
      Facts.of(SteeringSweep.class)
          .with("present", AmountFacts.AMOUNT, SteeringSweep::present)
          .list("rows", ROW, SteeringSweep::rows);

  private record Answer(Figure<SteeringSweep> sweep) {}

  private static final Facts<Answer> ANSWER =
      Facts.of(Answer.class).with("steering", FigureFacts.figure(SWEEP), Answer::sweep);

  private SteeringAnswer() {}

  public static Reply of(Figure<SteeringSweep> sweep) {
    return Reply.of("steering", ANSWER, new Answer(sweep));
  }
}
