package rutbook.ui.log;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.drawing.Ruler;
import rutbook.notebook.Carrier;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.Value;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.RulerControl;
import rutbook.units.Amount;

/** A setting with its ruler, or one ruler for each leg where the legs differ. */
final class SettingRow extends VBox {
  private final Desk desk;
  private final Setting setting;
  private final Label said = Keys.label("", "number");
  private final List<RulerControl> rulers = new ArrayList<>();
  private final List<HBox> legs = new ArrayList<>();
  private final ToggleButton split;
  private Reading reading;

  SettingRow(Desk desk, Setting setting, Consumer<Reading> chosen) {
    super(2);
    this.desk = desk;
    this.setting = setting;
    setId("setting-" + setting.id());
    boolean pair = setting.carrier() == Carrier.PAIR;
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox head = new HBox(10, Keys.label(setting.name(), "strong"), said, gap);
    head.setAlignment(Pos.CENTER_LEFT);
    split = Keys.choice("split-" + setting.id(), desk.text("changes.split"), this::layOut);
    split.getStyleClass().add("small");
    if (pair) {
      head.getChildren().add(split);
    }
    getChildren().add(head);
    for (int i = 0; i < (pair ? 2 : 1); i++) {
      Side side = i == 0 ? Side.LEFT : Side.RIGHT;
      String id = setting.id().text() + (i == 0 ? "" : "-right");
      RulerControl ruler =
          new RulerControl(
              id,
              desk.words(),
              desk.settingWords(),
              amount -> chosen.accept(with(side, amount)),
              desk.editor()::closeStep);
      rulers.add(ruler);
      HBox.setHgrow(ruler, Priority.ALWAYS);
      HBox leg = new HBox(10, Keys.label(desk.words().label(side), "soft", "condensed"), ruler);
      leg.setAlignment(Pos.CENTER_LEFT);
      legs.add(leg);
    }
  }

  private Reading with(Side side, Amount amount) {
    if (!(reading instanceof Reading.Pair pair)) {
      return Reading.of(amount);
    }
    if (!split.isSelected()) {
      return Reading.bothLegs(amount);
    }
    return side == Side.LEFT
        ? new Reading.Pair(Value.of(amount), pair.right())
        : new Reading.Pair(pair.left(), Value.of(amount));
  }

  /**
   * @param before the reading before this moto, or that of the day before
   */
  void show(Sheet sheet, Reading now, Reading before, java.util.Optional<Reading> baseline) {
    reading = now;
    if (now.legsDiffer()) {
      split.setSelected(true);
    }
    split.setDisable(now.legsDiffer());
    boolean moved = !now.sameAs(before);
    said.setText(
        moved
            ? desk.settingWords().change(setting, before, now)
            : desk.settingWords().reading(setting, now));
    said.getStyleClass().remove("blue");
    if (moved) {
      said.getStyleClass().add("blue");
    }
    for (int i = 0; i < rulers.size(); i++) {
      Side side = i == 0 ? Side.LEFT : Side.RIGHT;
      Ruler ruler =
          Ruler.ofLeg(sheet, setting, now, side).withPrevious(new Reading.One(before.leg(side)));
      if (baseline.isPresent()) {
        ruler = ruler.withBaseline(new Reading.One(baseline.get().leg(side)));
      }
      rulers.get(i).show(sheet, setting, ruler, marks(before, baseline));
    }
    layOut();
  }

  private List<String> marks(Reading before, java.util.Optional<Reading> baseline) {
    List<String> marks = new ArrayList<>();
    baseline.ifPresent(
        base -> marks.add(desk.text("ruler.baseline", desk.settingWords().reading(setting, base))));
    marks.add(desk.text("ruler.previous", desk.settingWords().reading(setting, before)));
    return marks;
  }

  private void layOut() {
    boolean two = split.isSelected();
    List<javafx.scene.Node> wanted = new ArrayList<>(List.of(getChildren().get(0)));
    legs.get(0).getChildren().get(0).setVisible(two);
    legs.get(0).getChildren().get(0).setManaged(two);
    wanted.add(legs.get(0));
    if (two && legs.size() > 1) {
      wanted.add(legs.get(1));
    }
    if (!getChildren().equals(wanted)) {
      getChildren().setAll(wanted);
    }
  }

  void focus() {
    rulers.get(0).view().requestFocus();
  }
}
