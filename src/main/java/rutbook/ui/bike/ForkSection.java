package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import rutbook.figures.FillRoom;
import rutbook.figures.ForkFigures;
import rutbook.figures.Riding;
import rutbook.notebook.ForkParts;
import rutbook.ui.controls.ChartView;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.words.ChartWords;
import rutbook.words.ForkWords;

/** The fork: how it is built, its force over its travel, and what each fill holds in reserve. */
final class ForkSection extends Section {
  private static final double CHART_HEIGHT = 330;

  private final ListAndDetail sides = new ListAndDetail();
  private final ChartView chart;
  private final FillTry fillTry;

  ForkSection(BikeDesk desk) {
    super(desk, "fork");
    chart = FigureNodes.chart(desk, "fork-chart", CHART_HEIGHT);
    fillTry = new FillTry(desk);
    getChildren().add(sides);
  }

  @Override
  void show(BikeModel model) {
    Riding riding = Riding.of(model.notebook().shelf(), model.timeline());
    ForkFigures fork = ForkFigures.of(model.sheet(), model.now(), riding);
    FigureNodes nodes = new FigureNodes(desk());
    ForkWords words = new ForkWords(desk().desk().phrases());
    fillTry.show(model, riding);
    sides.otherwise(aside(fork, nodes, words));
    sides.show(
        List.of(
            new ListAndDetail.Part(Optional.empty(), List.of(build(model), gas(model))),
            new ListAndDetail.Part(
                Optional.of(FigureNodes.stack(figures(fork, nodes, words, riding))), List.of())));
  }

  private ListAndDetail.Row build(BikeModel model) {
    ForkParts fork = model.sheet().parts().fork();
    String kind = desk().text("fork." + fork.kind().name());
    String more =
        desk()
            .words()
            .joined(
                List.of(
                    fork.travel().map(each -> desk().text("fork.travel.of", each)),
                    fork.sealDiameter().map(each -> desk().text("fork.seal.of", each)),
                    Optional.of(fork.valving())));
    return new ListAndDetail.Row(
        "fork-build",
        fork,
        Rows.face(desk().text("fork.row", kind), more, ""),
        desk().text("said", kind, more),
        () -> new ForkForm(desk(), sides::close));
  }

  private ListAndDetail.Row gas(BikeModel model) {
    String what = desk().text("gas.row");
    return new ListAndDetail.Row(
        "gas",
        model.sheet(),
        Rows.face(what, desk().text("gas.row.more"), ""),
        what,
        () -> new GasPanel(desk(), sides::close));
  }

  private List<Node> figures(ForkFigures fork, FigureNodes nodes, ForkWords words, Riding riding) {
    List<Node> shown = new ArrayList<>();
    Optional<ForkFigures.Drawn> drawn = fork.present().drawn().found();
    if (drawn.isEmpty()) {
      nodes.lacks(fork.present().drawn()).ifPresent(shown::add);
      return shown;
    }
    new ChartWords(desk().desk().phrases()).fork(fork, riding.frontSag()).ifPresent(chart::show);
    shown.add(chart);
    shown.add(
        nodes.table(
            nodes.words().say("fork.reserve"),
            words.reserves(fork, each -> Optional.of(each.whole()))));
    drawn
        .get()
        .fromSag()
        .ifPresent(
            from ->
                shown.add(
                    nodes.table(
                        nodes.words().say("fork.reserve-from", from.from()),
                        words.reserves(fork, ForkFigures.Drawn::fromSag))));
    shown.add(Keys.prose(nodes.words().say("model"), "soft", "condensed"));
    nodes.assumed(List.of(fork.present().drawn(), fork.frontMass())).ifPresent(shown::add);
    return shown;
  }

  private Node aside(ForkFigures fork, FigureNodes nodes, ForkWords words) {
    var box = Rows.aside(desk().text("fork.aside"), nodes.table("", words.legs(fork)));
    for (FillRoom room : fork.room().found().orElse(List.of())) {
      words
          .warning(room)
          .ifPresent(warning -> box.getChildren().add(Keys.prose(warning, "caution")));
    }
    words.mass(fork).ifPresent(mass -> box.getChildren().add(Keys.prose(mass, "soft")));
    box.getChildren().add(fillTry);
    return Scrolling.withStop(box);
  }
}
