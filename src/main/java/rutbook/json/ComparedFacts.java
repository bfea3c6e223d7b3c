package rutbook.json;

import java.util.List;
import rutbook.compare.CurvePair;
import rutbook.compare.LapComparison;
import rutbook.compare.LapDifference;
import rutbook.compare.MotoLaps;
import rutbook.compare.Spread;
import rutbook.compare.TrackDifference;
import rutbook.compare.TrackSide;
import rutbook.compare.TwoTracks;
import rutbook.compare.WithoutDrift;
import rutbook.figures.ForkFigures;
import rutbook.figures.Reserve;

/** Laps, curves and two tracks as they stand in the answer of {@code compare}. */
final class ComparedFacts {
  private static final Facts<MotoLaps> MOTO =
      Facts.line(MotoLaps.class)
          .with("day", Texts.DAY, laps -> laps.session().day())
          .with("moto", Numbers.WHOLE, laps -> laps.moto() + 1)
          .shortList("seconds", Numbers.FIGURE, MotoLaps::seconds);

  private static final Facts<LapDifference> DIFFERENCE =
      Facts.line(LapDifference.class)
          .with("seconds", Numbers.FIGURE, LapDifference::seconds)
          .with("standardError", Numbers.FIGURE, LapDifference::standardError)
          .with("low", Numbers.FIGURE, LapDifference::low)
          .with("high", Numbers.FIGURE, LapDifference::high)
          .with("chance", Numbers.FIGURE, LapDifference::chance)
          .flag("moreThanNoise", LapDifference::beyondNoise);

  static final Facts<LapComparison> LAPS =
      Facts.of(LapComparison.class)
          .with("state", Words.of(LapComparison.State.class), LapComparison::state)
          .list("from", MOTO, LapComparison::from)
          .list("to", MOTO, LapComparison::to)
          .ifKnown("difference", DIFFERENCE, LapComparison::result)
          .with("unchangedPairs", Numbers.WHOLE, LapComparison::pairs)
          .ifKnown("moreMotos", Numbers.WHOLE, LapComparison::moreMotos);

  private static final Facts<Reserve> RESERVE =
      Facts.line(Reserve.class)
          .with("from", AmountFacts.AMOUNT, Reserve::from)
          .with("slowJ", Numbers.FIGURE, Reserve::slow)
          .with("lineJ", Numbers.FIGURE, Reserve::line)
          .with("fastJ", Numbers.FIGURE, Reserve::fast);

  private static final Facts<ForkFigures.Drawn> DRAWN =
      Facts.of(ForkFigures.Drawn.class)
          .with("whole", RESERVE, ForkFigures.Drawn::whole)
          .ifKnown("fromSag", RESERVE, ForkFigures.Drawn::fromSag);

  static final Facts<CurvePair> CURVES =
      Facts.of(CurvePair.class)
          .with("from", FigureFacts.figure(DRAWN), CurvePair::from)
          .with("to", FigureFacts.figure(DRAWN), CurvePair::to);

  private static final Facts<TrackSide> SIDE =
      Facts.of(TrackSide.class)
          .with("track", Texts.TEXT, side -> side.track().name())
          .with("sessions", Numbers.WHOLE, side -> side.sessions().size())
          .with("motos", Numbers.WHOLE, TrackSide::motos)
          .ifKnown("bestDay", Texts.DAY, side -> side.best().map(best -> best.session().day()))
          .ifKnown("bestMoto", Numbers.WHOLE, side -> side.best().map(best -> best.moto() + 1));

  private static final Facts<Spread> SPREAD =
      Facts.line(Spread.class)
          .with("sessions", Numbers.WHOLE, Spread::sessions)
          .with("least", AmountFacts.AMOUNT, Spread::least)
          .with("median", AmountFacts.AMOUNT, Spread::median)
          .with("most", AmountFacts.AMOUNT, Spread::most);

  private static final Facts<WithoutDrift> WITHOUT =
      Facts.line(WithoutDrift.class)
          .with("by", AmountFacts.STEP, WithoutDrift::by)
          .with("low", AmountFacts.STEP, WithoutDrift::low)
          .with("high", AmountFacts.STEP, WithoutDrift::high)
          .shortList("taken", Words.of(WithoutDrift.Drift.class), ComparedFacts::taken);

  private static final Facts<TrackDifference> ROW =
      Facts.of(TrackDifference.class)
          .with("setting", SettingFacts.SETTING, TrackDifference::setting)
          .ifKnown("first", SPREAD, TrackDifference::first)
          .ifKnown("second", SPREAD, TrackDifference::second)
          .with("verdict", Words.of(TrackDifference.Verdict.class), TrackDifference::verdict)
          .with("chance", Numbers.FIGURE, TrackDifference::chance)
          .ifKnown("withoutDrift", WITHOUT, TrackDifference::withoutDrift);

  static final Facts<TwoTracks> TRACKS =
      Facts.of(TwoTracks.class)
          .with("first", SIDE, TwoTracks::first)
          .with("second", SIDE, TwoTracks::second)
          .list("settings", ROW, TwoTracks::settings);

  private ComparedFacts() {}

  private static List<WithoutDrift.Drift> taken(WithoutDrift without) {
    return without.taken().stream().sorted().toList();
  }
}
