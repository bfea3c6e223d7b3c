package rutbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.compare.CurvePair;
import rutbook.compare.FullComparison;
import rutbook.compare.LapComparison;
import rutbook.compare.TrackDifference;
import rutbook.compare.TrackDifference.Verdict;
import rutbook.compare.TwoTracks;
import rutbook.drawing.Chart;
import rutbook.drawing.ChartDrawing;
import rutbook.drawing.ChartLayout;
import rutbook.drawing.Drawing;
import rutbook.words.ChartWords;
import rutbook.words.ComparedWords;
import rutbook.words.ExplainWords;

/** What a comparison's card shows below its settings: laps, the fork's curves, all sessions. */
final class ComparedBlocks {
  private static final double WIDTH = 690;
  private static final double LAPS_HEIGHT = 110;
  private static final double CURVES_HEIGHT = 145;

  private final CardOf of;
  private final ComparedWords words;

  ComparedBlocks(CardOf of) {
    this.of = of;
    this.words = new ComparedWords(of.phrases());
  }

  List<Card.Block> of(FullComparison comparison) {
    List<Card.Block> blocks = new ArrayList<>();
    if (!comparison.explained().isEmpty()) {
      blocks.add(explained(comparison));
    }
    if (comparison.laps().result().isPresent()) {
      blocks.add(laps(comparison.laps()));
    }
    curves(comparison).ifPresent(blocks::add);
    comparison.tracks().ifPresent(tracks -> blocks.add(tracks(tracks)));
    return blocks;
  }

  private Card.Lines explained(FullComparison comparison) {
    ExplainWords explaining = new ExplainWords(of.phrases());
    return new Card.Lines(explaining.title(), explaining.sentences(comparison.explained()));
  }

  private Card.Figure laps(LapComparison laps) {
    Drawing drawing = words.dots(laps, WIDTH, LAPS_HEIGHT);
    String said = of.phrases().sentence(words.laps(laps));
    return new Card.Figure(
        words.say("laps", said), CardOf.picture(drawing, said), List.of(words.noise(laps)));
  }

  /** Nothing where the curves are one: then there is nothing to see. */
  private Optional<Card.Block> curves(FullComparison comparison) {
    CurvePair curves = comparison.curves();
    if (!curves.both() || curves.same()) {
      return Optional.empty();
    }
    Chart chart =
        new ChartWords(of.phrases())
            .compared(
                of.comparing().choice(comparison.sides().from().choice()),
                curves.from().found().orElseThrow(),
                of.comparing().choice(comparison.sides().to().choice()),
                curves.to().found().orElseThrow());
    Drawing drawing = ChartDrawing.of(chart, new ChartLayout.Size(WIDTH, CURVES_HEIGHT, 1));
    return Optional.of(
        new Card.Figure(
            words.say("curve"),
            CardOf.picture(drawing, words.say("curve")),
            words.reserve(curves)));
  }

  private Card.Lines tracks(TwoTracks tracks) {
    List<String> said = new ArrayList<>();
    said.add(words.track(tracks.first()));
    said.add(words.track(tracks.second()));
    for (TrackDifference row : tracks.settings(Verdict.CONSISTENT)) {
      said.add(words.say("consistent", words.setting(row)));
      row.withoutDrift().ifPresent(it -> said.add(of.phrases().sentence(words.without(row, it))));
    }
    return new Card.Lines(
        words.say("tracks", tracks.first().track().name(), tracks.second().track().name()), said);
  }
}
