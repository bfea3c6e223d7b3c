package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import rutbook.figures.Figure;
import rutbook.figures.SteeringSweep;
import rutbook.notebook.Geometry;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.ChartView;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.Dimension;
import rutbook.units.Length;
import rutbook.words.ChartWords;
import rutbook.words.SteeringWords;

/** Steering geometry: trail and rake at every height of the fork that the sheet allows. */
final class SteeringSection extends Section {
  private static final double CHART_HEIGHT = 260;

  private final ListAndDetail sides = new ListAndDetail();
  private final ChartView chart;
  private final AskText<Optional<Amount>> sagMore;

  SteeringSection(BikeDesk desk) {
    super(desk, "steering");
    chart = FigureNodes.chart(desk, "steering-chart", CHART_HEIGHT);
    sagMore =
        new Fields(desk)
            .amount("sag-more", "steering.sag.more", Optional.empty(), Dimension.LENGTH);
    sagMore.field().textProperty().addListener((text, before, now) -> show(desk().model()));
    getChildren().add(sides);
    sides.otherwise(
        Rows.aside(
            desk.text("steering.aside"), Keys.prose(desk.text("steering.hint"), "soft"), sagMore));
  }

  @Override
  void show(BikeModel model) {
    Figure<SteeringSweep> sweep = SteeringSweep.of(model.sheet(), model.now(), more());
    sides.show(
        List.of(
            new ListAndDetail.Part(Optional.empty(), List.of(geometry(model))),
            new ListAndDetail.Part(Optional.of(FigureNodes.stack(figures(sweep))), List.of())));
  }

  /** More sag at the rear than the geometry stands at; none while nothing sensible is typed. */
  private Amount more() {
    sagMore.refuse("");
    try {
      Optional<Amount> typed = sagMore.read();
      return typed.orElse(Amount.of(0, Length.MILLIMETRE));
    } catch (AmountException fault) {
      sagMore.refuse(desk().words().fault(fault));
      return Amount.of(0, Length.MILLIMETRE);
    }
  }

  private ListAndDetail.Row geometry(BikeModel model) {
    Geometry geometry = model.sheet().parts().geometry();
    String what = desk().text("geometry.row");
    String more =
        desk()
            .words()
            .joined(
                List.of(
                    geometry.rake().map(each -> desk().text("geometry.rake.of", each)),
                    geometry.forkOffset().map(each -> desk().text("geometry.offset.of", each)),
                    geometry.wheelbase().map(each -> desk().text("geometry.wheelbase.of", each))));
    return new ListAndDetail.Row(
        "geometry",
        geometry,
        Rows.face(what, more, ""),
        desk().text("said", what, more),
        () -> new GeometryForm(desk(), sides::close));
  }

  private List<Node> figures(Figure<SteeringSweep> sweep) {
    FigureNodes nodes = new FigureNodes(desk());
    List<Node> shown = new ArrayList<>();
    nodes.lacks(sweep).ifPresent(shown::add);
    if (sweep.found().isPresent()) {
      SteeringSweep found = sweep.found().get();
      new ChartWords(desk().desk().phrases())
          .trail(found)
          .ifPresent(
              trail -> {
                chart.show(trail);
                shown.add(chart);
              });
      shown.add(
          nodes.table(
              nodes.words().say("steering.title"),
              new SteeringWords(desk().desk().phrases()).sweep(found)));
      nodes.assumed(List.of(sweep)).ifPresent(shown::add);
    }
    return shown;
  }
}
