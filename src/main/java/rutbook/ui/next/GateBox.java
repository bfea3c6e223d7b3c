package rutbook.ui.next;

import java.util.Optional;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import rutbook.edit.EntryEdit;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.reasoning.GateCard;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.words.ReasoningWords;

/** What comes first, where it is put right, and a way past it with a reason that is kept. */
final class GateBox extends VBox {
  private final Desk desk;
  private final GateCard gate;

  GateBox(Desk desk, ReasoningWords words, GateCard gate) {
    super(8);
    this.desk = desk;
    this.gate = gate;
    setId("gate-" + gate.gate());
    getStyleClass().add("caution");
    getChildren().add(Keys.prose(words.gate(gate)));
    FlowPane keys = new FlowPane(6, 6);
    because()
        .ifPresent(
            place ->
                keys.getChildren()
                    .add(
                        Keys.smallKey(
                            "gate-see-" + gate.gate(),
                            desk.text("next.clear." + gate.gate()),
                            () -> desk.go(place))));
    if (!gate.blocks()) {
      keys.getChildren()
          .add(Keys.smallKey("gate-pass-" + gate.gate(), desk.text("next.pass"), this::askWhy));
    }
    getChildren().add(keys);
  }

  /** Where it is put right. */
  private Optional<Place> because() {
    return switch (gate.gate()) {
      case FAULT_OR_CRASH -> Optional.of(new Place.Bike(Place.BikePart.HISTORY));
      case SERVICE_DUE -> Optional.of(new Place.Bike(Place.BikePart.SERVICE));
      case SAG_OUT -> Optional.of(new Place.Bike(Place.BikePart.SHOCK));
      case READINGS_IN_DOUBT,
          NOT_CHECKED_AFTER,
          PRESSURES_NOT_CHECKED,
          FORK_NOT_BLED,
          AXLE_NOT_ALIGNED ->
          gate.because()
              .flatMap(desk.notebook()::entry)
              .filter(Entry.Session.class::isInstance)
              .map(entry -> new Place.Session(entry.id()));
    };
  }

  private void askWhy() {
    TextField why = new TextField();
    why.setId("gate-why");
    why.getStyleClass().add("large-target");
    why.setPromptText(desk.text("next.pass.why"));
    why.setAccessibleText(desk.text("next.pass.why"));
    why.setOnAction(event -> pass(why.getText()));
    getChildren().set(1, why);
    why.requestFocus();
  }

  private void pass(String reason) {
    if (reason.isBlank()) {
      return;
    }
    Bike bike = desk.bike().orElseThrow();
    desk.make(
        new EntryEdit.Add(new Entry.GateDismissed(desk.headToday(bike), gate.gate(), reason)));
  }
}
