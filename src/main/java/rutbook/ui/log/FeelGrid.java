package rutbook.ui.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Section;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Severity;

/** The feel of a day by section and end: moto after moto, the worst of each. */
final class FeelGrid extends VBox {
  private final Desk desk;
  private final GridPane grid = new GridPane();

  FeelGrid(Desk desk) {
    super(10);
    this.desk = desk;
    setId("feel-grid");
    grid.setHgap(28);
    grid.setVgap(8);
    getChildren().addAll(Keys.label(desk.text("grid.hint"), "soft"), grid);
  }

  /** The worst feel of each section and end over the motos given. */
  static Map<Section, Map<End, Feel>> worst(List<SessionModel.Ride> rides) {
    Map<Section, Map<End, Feel>> worst = new EnumMap<>(Section.class);
    for (SessionModel.Ride ride : rides) {
      for (Feel feel : ride.moto().report().feel()) {
        worst
            .computeIfAbsent(feel.section(), section -> new EnumMap<>(End.class))
            .merge(feel.end(), feel, (a, b) -> b.severity() > a.severity() ? b : a);
      }
    }
    return worst;
  }

  void show(SessionModel model) {
    Map<Section, Map<End, Feel>> worst = worst(model.rides());
    grid.getChildren().clear();
    if (worst.isEmpty()) {
      grid.add(Keys.label(desk.text("moto.nothing"), "soft"), 0, 0);
      return;
    }
    int column = 1;
    for (End end : End.values()) {
      grid.add(Keys.label(desk.words().label(end), "grid-head"), column++, 0);
    }
    int row = 1;
    for (Section section : worst.keySet()) {
      grid.add(Keys.label(desk.words().label(section), "condensed"), 0, row);
      for (End end : End.values()) {
        Optional<Feel> feel = Optional.ofNullable(worst.get(section).get(end));
        int place = row;
        feel.ifPresent(each -> grid.add(cell(each), 1 + each.end().ordinal(), place));
      }
      row++;
    }
  }

  private HBox cell(Feel feel) {
    List<javafx.scene.Node> nodes = new ArrayList<>();
    nodes.add(new Severity(feel.severity(), desk.text("feel.gone")));
    nodes.add(Keys.label(desk.words().name(feel.symptom()), "condensed"));
    HBox cell = new HBox(8);
    cell.getChildren().addAll(nodes);
    return cell;
  }
}
