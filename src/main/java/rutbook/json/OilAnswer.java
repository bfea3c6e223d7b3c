package rutbook.json;

import java.util.List;
import java.util.Optional;
import rutbook.figures.Figure;
import rutbook.figures.OilFigures;
import rutbook.figures.OilStanding;
import rutbook.notebook.Oil;
import rutbook.physics.IndexAnswer;
import rutbook.physics.ViscosityIndex;

/** What {@code oil} answers: each oil by the standards, and against the one in the fork. */
public final class OilAnswer {
  /** Another oil against the one in the fork. */
  public record Against(Oil oil, OilFigures.Ratio ratio) {}

  private static final Facts<OilFigures.At> AT =
      Facts.line(OilFigures.At.class)
          .with("temperature", AmountFacts.AMOUNT, OilFigures.At::temperature)
          .with("viscosity", AmountFacts.AMOUNT, OilFigures.At::viscosity);

  private static final FactKinds<IndexAnswer> INDEX =
      new FactKinds<IndexAnswer>()
          .add(
              ViscosityIndex.class,
              Facts.line(ViscosityIndex.class)
                  .with("index", Numbers.WHOLE, index -> Math.toIntExact(index.whole()))
                  .with("procedure", Texts.TEXT, index -> Words.word(index.procedure())))
          .add(
              IndexAnswer.None.class,
              Facts.line(IndexAnswer.None.class)
                  .with("none", Texts.TEXT, none -> Words.word(none.why())));

  private static final Facts<OilStanding> OIL =
      Facts.of(OilStanding.class)
          .with("id", Ids.OIL, standing -> standing.oil().id())
          .with("name", Texts.TEXT, standing -> standing.oil().name())
          .ifKnown("kv40", AmountFacts.AMOUNT, standing -> standing.oil().kv40())
          .ifKnown("kv100", AmountFacts.AMOUNT, standing -> standing.oil().kv100())
          .with("at", FigureFacts.figure(AT), OilStanding::at)
          .with("viscosityIndex", FigureFacts.figure(INDEX), OilStanding::index)
          .ifKnown("isoGrade", Texts.TEXT, standing -> standing.grade().map(Enum::name));

  private static final Facts<Against> AGAINST =
      Facts.line(Against.class)
          .with("oil", Ids.OIL, against -> against.oil().id())
          .with("ratio", Numbers.FIGURE, against -> against.ratio().ratio())
          .with("temperature", AmountFacts.AMOUNT, against -> against.ratio().temperature());

  private static final Facts<OilFigures.Blended> BLENDED =
      Facts.of(OilFigures.Blended.class)
          .with("part", Numbers.FIGURE, OilFigures.Blended::part)
          .with("at40", AmountFacts.AMOUNT, OilFigures.Blended::at40)
          .with("at100", AmountFacts.AMOUNT, OilFigures.Blended::at100)
          .with("at", AT, OilFigures.Blended::at);

  private record Answer(
      List<OilStanding> oils,
      Optional<Oil> inFork,
      List<Against> against,
      Optional<Figure<OilFigures.Blended>> blend) {}

  private static final Facts<Answer> ANSWER =
      Facts.of(Answer.class)
          .list("oils", OIL, Answer::oils)
          .ifKnown("inFork", Ids.OIL, answer -> answer.inFork().map(Oil::id))
          .list("againstInFork", AGAINST, Answer::against)
          .ifKnown("blend", FigureFacts.figure(BLENDED), Answer::blend);

  private OilAnswer() {}

  /**
   * @param inFork the oil that the last rebuild put in
   * @param against the others against it
   * @param blend when one was asked for
   */
  public static Reply of(
      List<OilStanding> oils,
      Optional<Oil> inFork,
      List<Against> against,
      Optional<Figure<OilFigures.Blended>> blend) {
    return Reply.of("oil", ANSWER, new Answer(oils, inFork, against, blend));
  }
}
