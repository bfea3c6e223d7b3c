package rutbook.ui.next;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import rutbook.drawing.ForkChart;
import rutbook.figures.ForkFigures;
import rutbook.figures.Riding;
import rutbook.notebook.Placed;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;
import rutbook.reasoning.Suggestion;
import rutbook.ui.Desk;
import rutbook.ui.controls.ChartView;
import rutbook.ui.controls.Keys;
import rutbook.units.Dimension;
import rutbook.words.BikeWords;
import rutbook.words.FigureWords;

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
    Optional<ForkFigures.Drawn> before = drawn(timeline, now);
    Optional<ForkFigures.Drawn> after =
        drawn(timeline, now.with(Placed.set(suggestion.setting().id(), suggestion.to())));
    boolean moves =
        before.isPresent()
            && after.isPresent()
            && !before.get().points().equals(after.get().points());
    return moves ? Optional.of(chart(before.get(), after.get())) : Optional.empty();
  }

  private static Optional<ForkFigures.Drawn> drawn(Timeline timeline, Setup setup) {
    return ForkFigures.of(timeline.bike().latestSheet(), setup, Riding.NOT_NOTED)
        .present()
        .drawn()
        .found();
  }

  private Node chart(ForkFigures.Drawn before, ForkFigures.Drawn after) {
    BikeWords bike = new BikeWords(desk.phrases());
    ChartView chart =
        new ChartView(
            "moved-curve",
            bike.text("chart.hint"),
            bike.text("chart.table"),
            HEIGHT,
            plain -> bike.number(Double.parseDouble(plain), 2));
    chart.show(
        new ForkChart(
                new FigureWords(desk.phrases())::chart,
                desk.phrases().display().unit(Dimension.LENGTH))
            .compared(
                new ForkChart.Fill(desk.text("next.curve.now"), before.curve()),
                new ForkChart.Fill(desk.text("next.curve.then"), after.curve())));
    return new VBox(6, Keys.prose(desk.text("next.curve"), "strong"), chart);
  }
}
