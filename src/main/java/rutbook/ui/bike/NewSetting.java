package rutbook.ui.bike;

import java.util.Optional;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import rutbook.notebook.Role;
import rutbook.ui.controls.Keys;

/** Asks what a new setting does; what it does says how it is usually counted. */
final class NewSetting extends VBox {
  private final FlowPane roles = new FlowPane(6, 6);

  NewSetting(BikeDesk desk, ListAndDetail sides) {
    super(10);
    setId("new-setting");
    getStyleClass().add("card");
    for (Role role : Role.values()) {
      roles
          .getChildren()
          .add(
              Keys.key(
                  "new-setting-" + role,
                  desk.words().name(role),
                  () ->
                      sides.open(
                          new SettingForm(
                              desk, Optional.empty(), role, each -> {}, sides::close))));
    }
    ScrollPane scroll = new ScrollPane(roles);
    scroll.setFitToWidth(true);
    scroll.setMinHeight(0);
    getChildren()
        .addAll(
            Keys.label(desk.text("setting.new"), "card-title"),
            Keys.prose(desk.text("setting.new.what"), "soft"),
            scroll,
            Keys.key("new-setting-cancel", desk.text("cancel"), sides::close));
  }

  @Override
  public void requestFocus() {
    roles.getChildren().get(0).requestFocus();
  }
}
