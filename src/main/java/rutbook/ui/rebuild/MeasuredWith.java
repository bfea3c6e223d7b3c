package rutbook.ui.rebuild;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import rutbook.notebook.Instrument;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;

/** What a fill was measured with: a key that says it, and shows what there is to choose from. */
final class MeasuredWith {
  private final Desk desk;
  private final Runnable changed;
  private final Button key = Keys.key("bench-with", "", this::open);
  private final FlowPane choices = new FlowPane(8, 8);
  private final VBox choosing = new VBox();
  private Optional<Instrument> chosen;

  MeasuredWith(Desk desk, Optional<Instrument> before, Runnable changed) {
    this.desk = desk;
    this.chosen = before;
    this.changed = changed;
    choosing.managedProperty().bind(Bindings.isNotEmpty(choosing.getChildren()));
    for (Instrument each : Instrument.values()) {
      ToggleButton choice = Keys.choice("bench-with-" + each, desk.phrases().name(each), () -> {});
      choice.setOnAction(
          event -> choose(choice.isSelected() ? Optional.of(each) : Optional.empty()));
      choices.getChildren().add(choice);
    }
    name();
  }

  private void choose(Optional<Instrument> instrument) {
    chosen = instrument;
    choosing.getChildren().clear();
    name();
    key.requestFocus();
    changed.run();
  }

  private void open() {
    boolean open = !choosing.getChildren().isEmpty();
    for (int i = 0; i < Instrument.values().length; i++) {
      ((ToggleButton) choices.getChildren().get(i))
          .setSelected(chosen.equals(Optional.of(Instrument.values()[i])));
    }
    choosing.getChildren().setAll(open ? List.of() : List.of(choices));
  }

  private void name() {
    key.setText(
        chosen
            .map(each -> desk.text("bench.measured.by", desk.phrases().name(each)))
            .orElseGet(() -> desk.text("bench.measured.with")));
  }

  Optional<Instrument> chosen() {
    return chosen;
  }

  /** Stands beside the field. */
  Button key() {
    return key;
  }

  /** Stands below the fields while it is open. */
  VBox choosing() {
    return choosing;
  }
}
