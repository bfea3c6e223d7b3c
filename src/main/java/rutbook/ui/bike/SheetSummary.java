package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import rutbook.notebook.Side;
import rutbook.ui.controls.AskOne;
import rutbook.ui.controls.Keys;

/** The sheet as a whole, beside its settings: the axle's side, and what falls outside. */
final class SheetSummary extends ScrollPane {
  SheetSummary(BikeDesk desk, ListAndDetail sides, Runnable addSetting) {
    BikeModel model = desk.model();
    List<Node> lines = new ArrayList<>();
    lines.add(Keys.label(desk.text("sheet.title"), "card-title"));
    lines.add(Keys.prose(desk.text("sheet.hint"), "soft"));
    lines.add(
        Rows.keys(
            Keys.key("add-setting", desk.text("setting.add"), addSetting),
            Keys.key(
                "new-sheet",
                desk.text("sheet.new.key"),
                () -> sides.open(new NewSheetForm(desk, sides::close))),
            Keys.key(
                "change-head",
                desk.text("head.key"),
                () -> sides.open(new HeadForm(desk, sides::close))),
            Keys.key("bike-new", desk.text("bike.new"), desk::newBike)));
    lines.add(axle(desk, model));
    if (!model.outside().isEmpty()) {
      lines.add(outside(desk, model));
    }
    VBox box = new VBox(12);
    box.getStyleClass().add("wash");
    box.getChildren().setAll(lines);
    setContent(box);
    setFitToWidth(true);
    setMinHeight(0);
    setHbarPolicy(ScrollBarPolicy.NEVER);
  }

  private static Node axle(BikeDesk desk, BikeModel model) {
    return new AskOne<Optional<Side>>(
            "axle-side",
            desk.text("axle.label"),
            List.of(Optional.of(Side.LEFT), Optional.of(Side.RIGHT), Optional.empty()),
            model.sheet().pinchedFirst(),
            side -> side.map(desk.words()::name).orElseGet(() -> desk.text("axle.unknown")))
        .whenChosen(side -> desk.put(desk.model().sheet().withPinchedFirst(side)))
        .hint(desk.text("axle.hint"));
  }

  static Node outside(BikeDesk desk, BikeModel model) {
    OutsideWords words = new OutsideWords(desk);
    VBox list = new VBox(4, Keys.prose(desk.text("outside.title"), "strong"));
    model.outside().forEach(each -> list.getChildren().add(Keys.prose(words.line(each))));
    list.getStyleClass().add("caution");
    list.setId("outside-list");
    return list;
  }
}
