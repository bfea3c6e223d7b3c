package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import rutbook.drawing.Chart;
import rutbook.figures.OilFigures;
import rutbook.figures.OilStanding;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.ui.controls.ChartView;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.units.Dimension;
import rutbook.words.ChartWords;
import rutbook.words.OilWords;

/** The oils on the shelf, how thick each is when ridden, and what one does in place of another. */
final class OilSection extends Section {
  private static final double CHART_HEIGHT = 300;

  private final ListAndDetail sides = new ListAndDetail();
  private final ChartView chart;
  private Optional<OilTry> oilTry = Optional.empty();
  private String tried = "";

  OilSection(BikeDesk desk) {
    super(desk, "oil");
    chart = FigureNodes.chart(desk, "oil-chart", CHART_HEIGHT);
    getChildren().add(sides);
  }

  @Override
  void show(BikeModel model) {
    List<Oil> oils = model.notebook().shelf().oils();
    Optional<OilId> id = OilStanding.inFork(model.timeline());
    Optional<Oil> inFork =
        oils.stream().filter(oil -> id.equals(Optional.of(oil.id()))).findFirst();
    sides.otherwise(aside(oils, inFork));
    List<OilStanding> standing =
        oils.stream().map(oil -> OilStanding.of(oil, Optional.empty())).toList();
    List<ListAndDetail.Row> rows = standing.stream().map(each -> row(each, inFork)).toList();
    sides.show(
        List.of(
            new ListAndDetail.Part(
                rows.isEmpty()
                    ? Optional.of(Keys.prose(desk().text("oil.none"), "soft"))
                    : Optional.empty(),
                rows),
            new ListAndDetail.Part(
                Optional.of(FigureNodes.stack(figures(standing, inFork))), List.of())));
  }

  private ListAndDetail.Row row(OilStanding standing, Optional<Oil> inFork) {
    Oil oil = standing.oil();
    String more =
        desk()
            .words()
            .joined(
                List.of(
                    oil.kv40().map(each -> desk().text("oil.kv40.of", each)),
                    oil.kv100().map(each -> desk().text("oil.kv100.of", each)),
                    inFork.filter(oil::equals).map(each -> desk().text("oil.in.fork"))));
    String value =
        standing
            .at()
            .found()
            .map(at -> desk().text("oil.at", at.viscosity(), at.temperature()))
            .orElse("");
    return new ListAndDetail.Row(
        "oil-" + oil.id(),
        oil,
        Rows.face(oil.name(), more, value),
        desk().text("said", oil.name(), more),
        () -> new OilForm(desk(), Optional.of(oil), sides::close));
  }

  private List<Node> figures(List<OilStanding> oils, Optional<Oil> inFork) {
    FigureNodes nodes = new FigureNodes(desk());
    List<Node> shown = new ArrayList<>();
    Optional<Chart> lines =
        new ChartWords(desk().desk().phrases())
            .oils(oils.stream().map(OilStanding::oil).toList(), inFork.map(Oil::id));
    if (lines.isPresent()) {
      chart.show(lines.get());
      shown.add(chart);
      OilWords words = new OilWords(desk().desk().phrases());
      shown.add(
          nodes.table(
              nodes
                  .words()
                  .say(
                      "oil.title",
                      desk().desk().phrases().amounts().unit(Dimension.KINEMATIC_VISCOSITY)),
              words.shelf(oils, OilFigures.RIDING)));
      oils.forEach(
          oil ->
              words
                  .noIndex(oil)
                  .ifPresent(said -> shown.add(Keys.prose(said, "soft", "condensed"))));
      nodes.assumed(oils.stream().map(OilStanding::at).toList()).ifPresent(shown::add);
    }
    return shown;
  }

  private Node aside(List<Oil> oils, Optional<Oil> inFork) {
    VBox box =
        Rows.aside(
            desk().text("oil.title"),
            Keys.prose(desk().text("oil.aside"), "soft"),
            Rows.keys(Keys.mainKey("oil-add", desk().text("oil.add"), this::newThing)));
    String key = OilTry.key(oils);
    if (oils.size() < 2) {
      oilTry = Optional.empty();
    } else if (oilTry.isEmpty() || !key.equals(tried)) {
      oilTry = Optional.of(new OilTry(desk(), oils, inFork));
    }
    tried = key;
    oilTry.ifPresent(box.getChildren()::add);
    return Scrolling.withStop(box);
  }

  @Override
  void newThing() {
    sides.open(new OilForm(desk(), Optional.empty(), sides::close));
  }
}
