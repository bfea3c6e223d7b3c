package rutbook.ui.next;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import rutbook.drawing.Chart;
import rutbook.figures.ForkFigures;
import rutbook.figures.Riding;
import rutbook.notebook.Placed;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;
import rutbook.physics.ForkPoint;
import rutbook.reasoning.Suggestion;
import rutbook.ui.Desk;
import rutbook.ui.PictureKey;
import rutbook.ui.controls.ChartView;
import rutbook.ui.controls.Keys;
import rutbook.words.BikeWords;
import rutbook.words.ChartWords;

/** The fork's force over its travel as it is and as suggested, where a setting moves that curve. */
final class MovedCurve {
  private static final double HEIGHT = 230;

  private final Desk desk;
  private final Suggestion suggestion;

  MovedCurve(Desk desk, Suggestion suggestion) {
    this.desk = desk;
    this.suggestion = suggestion;
  }

  /** Empty where the setting moves no curve, or the sheet does not say enough for one. */
  Optional<Node> node() {
    Timeline timeline = desk.timeline(desk.bike().orElseThrow().id());
    Setup now = timeline.now();
    ForkFigures before = fork(timeline, now);
    ForkFigures after =
        fork(timeline, now.with(Placed.set(suggestion.setting().id(), suggestion.to())));
    ChartWords words = new ChartWords(desk.phrases());
    return points(before).equals(points(after))
        ? Optional.empty()
        : words
            .compared(desk.text("next.curve.now"), before, desk.text("next.curve.then"), after)
            .map(this::shown);
  }

  private static ForkFigures fork(Timeline timeline, Setup setup) {
    return ForkFigures.of(timeline.bike().latestSheet(), setup, Riding.NOT_NOTED);
  }

  private static Optional<List<ForkPoint>> points(ForkFigures fork) {
    return fork.present().drawn().found().map(ForkFigures.Drawn::points);
  }

  private Node shown(Chart compared) {
    BikeWords bike = new BikeWords(desk.phrases());
    ChartView chart =
        new ChartView(
            "moved-curve",
            bike.text("chart.hint"),
            bike.text("chart.table"),
            HEIGHT,
            () -> new ChartWords(desk.phrases()));
    chart.show(compared);
    PictureKey.below(chart, desk, () -> PictureKey.title(desk));
    return new VBox(6, Keys.prose(desk.text("next.curve"), "strong"), chart);
  }
}
