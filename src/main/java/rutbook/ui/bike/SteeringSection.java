package rutbook.ui.bike;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Geometry;

/** Steering geometry: what the manual says, and what heights make of it. */
final class SteeringSection extends Section {
  private final TwoSides sides = new TwoSides();

  SteeringSection(BikeDesk desk) {
    super(desk, "steering");
    getChildren().add(sides);
  }

  @Override
  void show(BikeModel model) {
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
    sides.show(
        List.of(
            new TwoSides.Part(
                Optional.empty(),
                List.of(
                    new TwoSides.Row(
                        "geometry",
                        geometry,
                        Rows.face(what, more, ""),
                        desk().text("said", what, more),
                        () -> new GeometryForm(desk(), sides::close))))));
  }
}
