package rutbook.ui.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.notebook.Feel;
import rutbook.ui.Desk;
import rutbook.ui.controls.KeyRow;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Severity;

/**
 * What bothered in the motos before, waiting for one touch each, and below it what is new in this
 * one. Rows stay the same nodes from edit to edit, so that the focus stays where it was.
 */
final class StillThere extends VBox {
  private static final int WORST = 5;

  /** Wider than this a name would stand too far from its keys. */
  private static final double WIDEST_EM = 44;

  private final Desk desk;
  private final Consumer<Feel> noted;
  private final Consumer<Feel> takenBack;
  private final Map<Feel.Key, Row> rows = new HashMap<>();
  private List<Feel.Key> places = List.of();

  StillThere(Desk desk, Consumer<Feel> noted, Consumer<Feel> takenBack) {
    super(5);
    this.desk = desk;
    this.noted = noted;
    this.takenBack = takenBack;
    setId("feel-still");
    setMaxWidth(WIDEST_EM * desk.em());
  }

  void show(FeelModel model) {
    List<Feel.Key> now = model.standing().stream().map(FeelModel.Standing::key).toList();
    if (!now.equals(places)) {
      places = now;
      rows.clear();
    }
    List<Node> nodes = new ArrayList<>();
    nodes.add(Keys.label(desk.text("feel.still"), "group-title"));
    if (model.standing().isEmpty()) {
      nodes.add(Keys.prose(desk.text("feel.still.none"), "soft"));
    }
    int place = 0;
    for (FeelModel.Standing standing : model.standing()) {
      int its = place++;
      Row row = rows.computeIfAbsent(standing.key(), key -> new Row(standing.last(), its));
      row.show(standing);
      nodes.add(row);
    }
    if (!model.fresh().isEmpty()) {
      nodes.add(Keys.label(desk.text("feel.fresh"), "group-title"));
    }
    model.fresh().forEach(feel -> nodes.add(fresh(feel)));
    replace(nodes);
  }

  /** Rows that stay are never taken out, so that the focus in them stays. */
  private void replace(List<Node> nodes) {
    getChildren().removeIf(node -> !nodes.contains(node));
    for (int i = 0; i < nodes.size(); i++) {
      if (i >= getChildren().size() || getChildren().get(i) != nodes.get(i)) {
        getChildren().add(i, nodes.get(i));
      }
    }
  }

  private Label named(Feel feel) {
    Label label = Keys.prose(Names.of(desk.words(), feel), "condensed");
    label.setMinWidth(60);
    HBox.setHgrow(label, Priority.ALWAYS);
    label.setMaxWidth(Double.MAX_VALUE);
    return label;
  }

  /** One touch says gone, the same, or how bad it is now; the last severity is ringed. */
  private final class Row extends HBox {
    private final KeyRow keys;
    private final Feel last;

    Row(Feel last, int place) {
      super(6);
      this.last = last;
      setAlignment(Pos.CENTER_LEFT);
      String name = Names.of(desk.words(), last);
      keys = new KeyRow("still-" + place, 4);
      for (int i = 0; i <= WORST; i++) {
        Feel next = last.withSeverity(i);
        String text = i == 0 ? desk.text("feel.gone") : Integer.toString(i);
        ToggleButton key = Keys.choice("still-" + place + "-" + i, text, () -> noted.accept(next));
        key.getStyleClass().addAll("number", i == 0 ? "gone" : "square");
        key.setAccessibleText(name + ": " + desk.text("feel.severity", i));
        keys.add(key, Integer.toString(i));
      }
      keys.setMinWidth(KeyRow.USE_PREF_SIZE);
      getChildren().addAll(named(last), keys);
    }

    void show(FeelModel.Standing standing) {
      Optional<Integer> now =
          standing.now().isPresent() ? Optional.of(standing.now().getAsInt()) : Optional.empty();
      List<ToggleButton> all = keys.keys();
      for (int i = 0; i < all.size(); i++) {
        all.get(i).setSelected(now.equals(Optional.of(i)));
        all.get(i).getStyleClass().remove("was");
        if (i == last.severity() && !now.equals(Optional.of(i))) {
          all.get(i).getStyleClass().add("was");
        }
      }
    }
  }

  private Node fresh(Feel feel) {
    var back =
        Keys.smallKey(
            "take-back-" + feel.end() + "-" + feel.section() + "-" + feel.symptom(),
            desk.text("feel.take.back"),
            () -> takenBack.accept(feel));
    back.setAccessibleText(desk.text("feel.take.back") + ": " + Names.of(desk.words(), feel));
    HBox row =
        new HBox(10, named(feel), new Severity(feel.severity(), desk.text("feel.gone")), back);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }
}
