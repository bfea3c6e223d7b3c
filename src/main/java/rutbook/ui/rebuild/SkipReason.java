package rutbook.ui.rebuild;

import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.Background;

/** Why a step is left out: one touch for the usual reasons, or a few words. */
final class SkipReason extends VBox {
  private static final String[] USUAL = {"part", "tool", "not.fitted", "later"};

  SkipReason(Desk desk, Consumer<String> chosen, Runnable cancel) {
    super(8);
    setId("skip-reason");
    getStyleClass().add("wash");
    FlowPane usual = new FlowPane(8, 8);
    for (String each : USUAL) {
      String reason = desk.text("skip." + each);
      usual.getChildren().add(Keys.key("skip-" + each, reason, () -> chosen.accept(reason)));
    }
    TextField own = new TextField();
    own.setId("skip-own");
    own.getStyleClass().add("large-target");
    own.setPromptText(desk.text("skip.own"));
    own.setAccessibleText(desk.text("skip.own"));
    HBox.setHgrow(own, Priority.ALWAYS);
    Button take =
        Keys.mainKey("skip-take", desk.text("skip.take"), () -> chosen.accept(own.getText()));
    take.disableProperty().bind(own.textProperty().map(text -> text.isBlank()));
    own.setOnAction(event -> take.fire());
    HBox row = new HBox(8, own, take, Keys.key("skip-cancel", desk.text("skip.cancel"), cancel));
    row.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(Keys.label(desk.text("skip.title"), "card-title"), usual, row);
    Background.afterwards(own::requestFocus);
  }
}
