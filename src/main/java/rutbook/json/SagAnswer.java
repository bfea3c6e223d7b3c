package rutbook.json;

import java.time.LocalDate;
import rutbook.figures.Figure;
import rutbook.figures.SagFigures;

/** What {@code sag} answers: the worksheet of the rear. */
public final class SagAnswer {
  private static final Facts<SagFigures.Spread> SPREAD =
      Facts.of(SagFigures.Spread.class)
          .with("least", AmountFacts.AMOUNT, SagFigures.Spread::least)
          .with("middle", AmountFacts.AMOUNT, SagFigures.Spread::middle)
          .with("most", AmountFacts.AMOUNT, SagFigures.Spread::most);

  private static final Facts<SagFigures.Measured> MEASURED =
      Facts.of(SagFigures.Measured.class)
          .with("race", AmountFacts.AMOUNT, SagFigures.Measured::race)
          .with("free", AmountFacts.AMOUNT, SagFigures.Measured::free)
          .ifKnown("friction", AmountFacts.AMOUNT, SagFigures.Measured::friction);

  private static final Facts<SagFigures.Target> TARGET =
      Facts.of(SagFigures.Target.class)
          .with("race", AmountFacts.AMOUNT, SagFigures.Target::race)
          .with("free", AmountFacts.AMOUNT, SagFigures.Target::free);

  private static final Facts<SagFigures.Fitting> FITTING =
      Facts.of(SagFigures.Fitting.class)
          .with("preload", AmountFacts.AMOUNT, SagFigures.Fitting::preload)
          .ifKnown("collarTurns", AmountFacts.STEP, SagFigures.Fitting::turns)
          .flag("fits", SagFigures.Fitting::fits);

  private static final Facts<SagFigures.Wanted> WANTED =
      Facts.of(SagFigures.Wanted.class)
          .with("rate", SPREAD, SagFigures.Wanted::rate)
          .with("change", Numbers.FIGURE, SagFigures.Wanted::share)
          .with("fitting", FITTING, SagFigures.Wanted::preload)
          .ifKnown("held", AmountFacts.AMOUNT, SagFigures.Wanted::held)
          .flag("inside", SagFigures.Wanted::inside);

  private static final Facts<SagFigures.AtHand> SPRING =
      Facts.of(SagFigures.AtHand.class)
          .with("rate", AmountFacts.AMOUNT, SagFigures.AtHand::rate)
          .flag("fitted", SagFigures.AtHand::fitted)
          .with("fitting", FITTING, SagFigures.AtHand::preload)
          .with("free", AmountFacts.AMOUNT, SagFigures.AtHand::free)
          .flag("offered", SagFigures.AtHand::offered);

  private static final Facts<SagFigures.Collar> COLLAR =
      Facts.of(SagFigures.Collar.class)
          .with("pitch", AmountFacts.AMOUNT, SagFigures.Collar::pitch)
          .with("sagPerTurn", AmountFacts.STEP, SagFigures.Collar::sagPerTurn);

  private static final Facts<SagFigures> SAG =
      Facts.of(SagFigures.class)
          .with("measured", MEASURED, SagFigures::measured)
          .with("wheelRate", SPREAD, SagFigures::wheelRate)
          .with("wheelRateOfSpring", AmountFacts.AMOUNT, SagFigures::wheelRateOfSpring)
          .ifKnown("verdict", Texts.TEXT, sag -> sag.verdict().map(Words::word))
          .with("target", TARGET, SagFigures::target)
          .with("wanted", WANTED, SagFigures::wanted)
          .list("springs", SPRING, SagFigures::springs)
          .ifKnown("collar", COLLAR, SagFigures::collar);

  private record Answer(LocalDate day, Figure<SagFigures> sag) {}

  private static final Facts<Answer> ANSWER =
      Facts.of(Answer.class)
          .with("measuredOn", Texts.DAY, Answer::day)
          .with("worksheet", FigureFacts.figure(SAG), Answer::sag);

  private SagAnswer() {}

  public static Reply of(Figure<SagFigures> sag, LocalDate measuredOn) {
    return Reply.of("sag", ANSWER, new Answer(measuredOn, sag));
  }
}
