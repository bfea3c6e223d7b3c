package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Tightening;
import rutbook.ui.controls.Keys;

/** The torque table, each line with where it was read. */
final class TorqueSection extends Section {
  private final ListAndDetail sides = new ListAndDetail();

  TorqueSection(BikeDesk desk) {
    super(desk, "torques");
    getChildren().add(sides);
  }

  @Override
  void show(BikeModel model) {
    sides.otherwise(
        Rows.aside(
            desk().text("torque.title"),
            Keys.prose(desk().text("torque.caution"), "caution"),
            Rows.keys(Keys.mainKey("torque-add", desk().text("torque.add"), this::newThing))));
    List<ListAndDetail.Row> rows = new ArrayList<>();
    List<Tightening> torques = model.sheet().torques();
    for (int i = 0; i < torques.size(); i++) {
      rows.add(row(i, torques.get(i)));
    }
    sides.show(
        rows.isEmpty()
            ? List.of(
                new ListAndDetail.Part(
                    Optional.of(Keys.prose(desk().text("torque.none"), "soft")), List.of()))
            : List.of(new ListAndDetail.Part(Optional.empty(), rows)));
  }

  private ListAndDetail.Row row(int place, Tightening torque) {
    String value = desk().words().both(torque.amount());
    return new ListAndDetail.Row(
        "torque-" + place,
        torque,
        Rows.face(torque.name(), torque.source(), value),
        desk().text("said", torque.name(), value),
        () -> new TorqueForm(desk(), Optional.of(place), sides::close));
  }

  @Override
  void newThing() {
    sides.open(new TorqueForm(desk(), Optional.empty(), sides::close));
  }
}
