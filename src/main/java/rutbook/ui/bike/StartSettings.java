package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.notebook.Role;
import rutbook.ui.controls.Keys;
import rutbook.units.Display;

/** The second step: which adjusters the bike has, how far they go, and how they stand. */
final class StartSettings implements StartStep {
  private static final List<Role> ROLES =
      List.of(
          Role.FORK_COMPRESSION,
          Role.FORK_REBOUND,
          Role.SHOCK_LOW_SPEED,
          Role.SHOCK_HIGH_SPEED,
          Role.SHOCK_REBOUND,
          Role.TUBE_ABOVE_CLAMP,
          Role.SHOCK_PRELOAD,
          Role.TYRE_FRONT,
          Role.TYRE_REAR);

  private final VBox box = new VBox(10);
  private final List<StartRow> rows = new ArrayList<>();
  private List<FirstSheet.Line> lines = List.of();

  StartSettings(BikeDesk desk, Display display) {
    GridPane grid = new GridPane();
    grid.setHgap(12);
    grid.setVgap(6);
    ColumnConstraints wide = new ColumnConstraints();
    wide.setHgrow(Priority.ALWAYS);
    grid.getColumnConstraints().add(wide);
    String[] heads = {"start.has", "start.least", "start.most", "start.now"};
    for (int i = 0; i < heads.length; i++) {
      Label head = Keys.prose(desk.text(heads[i]), "group-title");
      head.setMaxWidth(170);
      grid.add(head, i, 0);
    }
    for (Role role : ROLES) {
      StartRow row = new StartRow(desk, role, display);
      rows.add(row);
      grid.addRow(rows.size(), row.nodes().toArray(Node[]::new));
    }
    grid.setMaxWidth(860);
    box.getChildren().addAll(Keys.prose(desk.text("start.settings.hint"), "soft"), grid);
  }

  @Override
  public Node node() {
    return box;
  }

  @Override
  public void check(Answers answers) {
    List<FirstSheet.Line> read = new ArrayList<>();
    rows.forEach(row -> row.read(answers).ifPresent(read::add));
    lines = read;
  }

  List<FirstSheet.Line> lines() {
    return lines;
  }
}
