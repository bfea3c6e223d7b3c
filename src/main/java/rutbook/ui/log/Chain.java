package rutbook.ui.log;

import java.util.List;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.Background;

/** The motos side by side, with what was changed standing on the link between two of them. */
final class Chain extends ScrollPane {
  private static final int MOST_ON_A_LINK = 2;

  private final Desk desk;
  private final HBox row = new HBox();
  private final IntConsumer chooseMoto;
  private final IntConsumer chooseLink;

  /**
   * @param chooseMoto gets the place of a moto, from 0; -1 for the start of the day
   * @param chooseLink gets the place of the moto after the link
   */
  Chain(Desk desk, IntConsumer chooseMoto, IntConsumer chooseLink) {
    this.desk = desk;
    this.chooseMoto = chooseMoto;
    this.chooseLink = chooseLink;
    setId("chain");
    setContent(row);
    setFitToHeight(true);
    // Head, three symptoms, how many more, and the laps: measured in text, so that it grows with
    // it.
    setStyle("-fx-min-height: 12.6em; -fx-pref-height: 12.6em;");
    setVbarPolicy(ScrollBarPolicy.NEVER);
    row.setAlignment(Pos.CENTER_LEFT);
    row.setStyle("-fx-padding: 0 0 4 0;");
  }

  void show(SessionModel model, int chosen, boolean entering) {
    row.getChildren().clear();
    row.getChildren().add(start(model, chosen < 0));
    for (int i = 0; i < model.rides().size(); i++) {
      int place = i;
      row.getChildren().addAll(link(model, i));
      row.getChildren()
          .add(
              new MotoCard(
                  desk,
                  model.rides().get(i),
                  i == chosen,
                  i == chosen && entering,
                  () -> chooseMoto.accept(place)));
    }
    row.layout();
    double share =
        model.rides().size() <= 1 ? 0 : Math.max(0, chosen) / (model.rides().size() - 1.0);
    setHvalue(share);
    Background.afterwards(() -> setHvalue(share));
  }

  private Node start(SessionModel model, boolean chosen) {
    Button start = Keys.key("chain-start", "", () -> chooseMoto.accept(-1));
    String state =
        model.first()
            ? desk.text("link.start.first")
            : model.breaks().isEmpty()
                ? desk.text("link.start.asleft")
                : desk.text("link.start.breaks", model.breaks().size());
    VBox text =
        new VBox(
            2,
            Keys.label(desk.text("link.start"), "strong"),
            Keys.prose(state, model.breaks().isEmpty() ? "soft" : "due", "condensed"));
    text.setPrefWidth(96);
    text.setMaxWidth(96);
    start.setGraphic(text);
    start.setMinWidth(118);
    start.getStyleClass().add("moto-card");
    if (chosen) {
      start.setStyle("-fx-border-color: -rb-ink; -fx-border-width: 2px;");
    }
    start.setAccessibleText(desk.text("link.start") + ", " + state);
    return start;
  }

  private List<Node> link(SessionModel model, int place) {
    SessionModel.Ride ride = model.rides().get(place);
    Button link = new Button();
    link.getStyleClass().setAll("button", "chain-link");
    link.setId("link-" + ride.number());
    link.setGraphic(linkText(ride));
    link.setMinWidth(Region.USE_PREF_SIZE);
    link.setMinHeight(44);
    link.setOnAction(event -> chooseLink.accept(place));
    link.setAccessibleText(spoken(ride));
    return List.of(bar(), link, bar());
  }

  private static Region bar() {
    Region bar = new Region();
    bar.getStyleClass().add("chain-bar");
    return bar;
  }

  private Node linkText(SessionModel.Ride ride) {
    VBox text = new VBox(1);
    text.setAlignment(Pos.CENTER);
    if (ride.moved().isEmpty()) {
      text.getChildren().add(Keys.label(desk.text("link.same"), "condensed", "soft"));
      return text;
    }
    for (SessionModel.Moved moved :
        ride.moved().subList(0, Math.min(MOST_ON_A_LINK, ride.moved().size()))) {
      text.getChildren()
          .addAll(
              Keys.label(moved.setting().name(), "condensed"),
              Keys.label(
                  desk.settingWords().move(moved.setting(), moved.from(), moved.to()), "strong"),
              Keys.label(
                  desk.settingWords().sense(moved.setting(), moved.from(), moved.to()),
                  "condensed"));
    }
    int more = ride.moved().size() - MOST_ON_A_LINK;
    if (more > 0) {
      text.getChildren().add(Keys.label(desk.text("link.more", more), "condensed", "due"));
    }
    return text;
  }

  private String spoken(SessionModel.Ride ride) {
    if (ride.moved().isEmpty()) {
      return desk.text("link.same");
    }
    StringBuilder text = new StringBuilder();
    for (SessionModel.Moved moved : ride.moved()) {
      text.append(moved.setting().name())
          .append(' ')
          .append(desk.settingWords().change(moved.setting(), moved.from(), moved.to()))
          .append(". ");
    }
    return text.toString().strip();
  }
}
