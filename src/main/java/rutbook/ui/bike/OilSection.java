package rutbook.ui.bike;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Oil;
import rutbook.ui.controls.Keys;

/** The oils on the shelf, and how thick each is at riding temperature. */
final class OilSection extends Section {
  private final TwoSides sides = new TwoSides();

  OilSection(BikeDesk desk) {
    super(desk, "oil");
    getChildren().add(sides);
  }

  @Override
  void show(BikeModel model) {
    List<Oil> oils = model.notebook().shelf().oils();
    sides.otherwise(
        Rows.aside(
            desk().text("oil.title"),
            Keys.prose(desk().text("oil.aside"), "soft"),
            Rows.keys(Keys.mainKey("oil-add", desk().text("oil.add"), this::newThing))));
    List<TwoSides.Row> rows = oils.stream().map(this::row).toList();
    sides.show(
        List.of(
            new TwoSides.Part(
                rows.isEmpty()
                    ? Optional.of(Keys.prose(desk().text("oil.none"), "soft"))
                    : Optional.empty(),
                rows)));
  }

  private TwoSides.Row row(Oil oil) {
    String more =
        desk()
            .words()
            .joined(
                List.of(
                    oil.kv40().map(each -> desk().text("oil.kv40.of", each)),
                    oil.kv100().map(each -> desk().text("oil.kv100.of", each))));
    return new TwoSides.Row(
        "oil-" + oil.id(),
        oil,
        Rows.face(oil.name(), more, ""),
        desk().text("said", oil.name(), more),
        () -> new OilForm(desk(), Optional.of(oil), sides::close));
  }

  @Override
  void newThing() {
    sides.open(new OilForm(desk(), Optional.empty(), sides::close));
  }
}
