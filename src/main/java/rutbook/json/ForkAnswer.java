package rutbook.json;

import java.util.Optional;
import rutbook.figures.Figure;
import rutbook.figures.FillRoom;
import rutbook.figures.ForkFigures;
import rutbook.figures.LegFigures;
import rutbook.figures.Reserve;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Side;
import rutbook.physics.ForkChange;
import rutbook.physics.ForkPoint;

/** What {@code fork} answers: legs, air left, and the curve and reserve of each fill. */
public final class ForkAnswer {
  private static final Facts<LegFigures> LEG =
      Facts.of(LegFigures.class)
          .with("leg", Words.of(Side.class), LegFigures::side)
          .ifKnown("fill", AmountFacts.AMOUNT, LegFigures::fill)
          .ifKnown("spring", AmountFacts.AMOUNT, LegFigures::spring)
          .ifKnown("preload", AmountFacts.AMOUNT, LegFigures::preload)
          .ifKnown("airPressure", AmountFacts.AMOUNT, LegFigures::airPressure)
          .ifKnown("chamber", AmountFacts.AMOUNT, LegFigures::chamber)
          .with("chamberFrom", Texts.TEXT, leg -> Words.word(leg.chamberFrom()));

  private static final Facts<FillRoom> ROOM =
      Facts.of(FillRoom.class)
          .with("leg", Words.of(Side.class), FillRoom::leg)
          .with("airAtExtension", AmountFacts.AMOUNT, FillRoom::airAtExtension)
          .with("airAtFullStroke", AmountFacts.AMOUNT, FillRoom::airAtFullStroke)
          .ifKnown("compression", Numbers.FIGURE, room -> FigureFacts.known(room.compression()))
          .with("roomForOil", AmountFacts.STEP, FillRoom::roomForOil)
          .flag("measured", FillRoom::measured)
          .with("verdict", Texts.TEXT, room -> Words.word(room.verdict()));

  private static final Facts<ForkPoint> POINT =
      Facts.line(ForkPoint.class)
          .with("strokeMm", Numbers.FIGURE, point -> point.stroke() * 1000)
          .with("springsN", Numbers.FIGURE, ForkPoint::coil)
          .with("airN", Numbers.FIGURE, ForkPoint::air)
          .with("slowN", Numbers.FIGURE, ForkPoint::slow)
          .with("lineN", Numbers.FIGURE, ForkPoint::line)
          .with("fastN", Numbers.FIGURE, ForkPoint::fast);

  private static final Facts<Reserve> RESERVE =
      Facts.of(Reserve.class)
          .with("from", AmountFacts.AMOUNT, Reserve::from)
          .with("slowJ", Numbers.FIGURE, Reserve::slow)
          .with("lineJ", Numbers.FIGURE, Reserve::line)
          .with("fastJ", Numbers.FIGURE, Reserve::fast)
          .with("dropHeight", FigureFacts.figure(AmountFacts.AMOUNT), Reserve::dropHeight);

  private static final Facts<ForkFigures.Drawn> DRAWN =
      Facts.of(ForkFigures.Drawn.class)
          .with("reserve", RESERVE, ForkFigures.Drawn::whole)
          .ifKnown("reserveFromSag", RESERVE, ForkFigures.Drawn::fromSag)
          .list("points", POINT, ForkFigures.Drawn::points);

  private static final Facts<ForkFigures.FillCurve> CURVE =
      Facts.of(ForkFigures.FillCurve.class)
          .with("kind", Texts.TEXT, curve -> Words.word(curve.kind()))
          .shortList("fills", AmountFacts.AMOUNT, ForkFigures.FillCurve::fills)
          .with("curve", FigureFacts.figure(DRAWN), ForkFigures.FillCurve::drawn);

  private static final Facts<ForkChange> CHANGE =
      Facts.of(ForkChange.class)
          .ifKnown(
              "middleAirForce",
              Numbers.FIGURE,
              change -> FigureFacts.known(change.middleAirForce()))
          .ifKnown("endAirForce", Numbers.FIGURE, change -> FigureFacts.known(change.endAirForce()))
          .ifKnown("endTotalForce", Numbers.FIGURE, change -> FigureFacts.known(change.endForce()))
          .ifKnown("totalEnergy", Numbers.FIGURE, change -> FigureFacts.known(change.reserve()));

  private record Answer(ForkFigures fork, Optional<Figure<ForkChange>> change) {}

  private static final Facts<Answer> ANSWER =
      Facts.of(Answer.class)
          .with("kind", Words.of(ForkKind.class), answer -> answer.fork().kind())
          .list("legs", LEG, answer -> answer.fork().legs())
          .with(
              "room", FigureFacts.figure(Facts.listOf(ROOM, false)), answer -> answer.fork().room())
          .with(
              "frontMassKg",
              FigureFacts.figure(Numbers.FIGURE),
              answer -> answer.fork().frontMass())
          .list("curves", CURVE, answer -> answer.fork().inOrder())
          .ifKnown("change", FigureFacts.figure(CHANGE), Answer::change);

  private ForkAnswer() {}

  /**
   * @param change what another fill would do, when one was asked for
   */
  public static Reply of(ForkFigures fork, Optional<Figure<ForkChange>> change) {
    return Reply.of("fork", ANSWER, new Answer(fork, change));
  }
}
