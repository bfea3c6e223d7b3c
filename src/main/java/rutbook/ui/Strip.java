package rutbook.ui;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.notebook.Bike;
import rutbook.notebook.Notebook;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.RulerSentence;
import rutbook.ui.controls.RulerView;
import rutbook.units.Dimension;

/**
 * The strip at the top of every page. Where the window is too narrow for every setting it folds to
 * the ones moved most, and unfolds on a touch.
 */
final class Strip extends HBox {
  private static final double TICKED_WIDTH_EM = 7.4;
  private static final double BIKE_WIDTH_EM = 12.5;

  private final Desk desk;
  private final VBox bikeBox = new VBox(2);
  private final FlowPane settings = new FlowPane(4, 2);
  private final Button fold;
  private boolean unfolded;
  private StripModel model;
  private int shownPlaces = -1;

  Strip(Desk desk) {
    super(14);
    this.desk = desk;
    setId("strip");
    getStyleClass().add("strip");
    bikeBox.setId("strip-bike");
    fold = Keys.smallKey("strip-fold", "", this::toggle);
    Region divider = new Region();
    divider.getStyleClass().add("divider");
    HBox.setHgrow(settings, Priority.ALWAYS);
    settings.setMinWidth(0);
    getChildren().addAll(bikeBox, divider, settings, fold);
    setAlignment(Pos.CENTER_LEFT);
    widthProperty().addListener((width, before, now) -> layOutSettings(false));
    desk.chosenBike().addListener((chosen, before, now) -> show(desk.notebook()));
  }

  private void toggle() {
    unfolded = !unfolded;
    layOutSettings(true);
  }

  void show(Notebook notebook) {
    Optional<Bike> bike = desk.bike();
    if (bike.isEmpty()) {
      model = null;
      bikeBox.getChildren().setAll(Keys.label(desk.text("strip.nobike"), "card-title"));
      settings.getChildren().clear();
      fold.setVisible(false);
      fold.setManaged(false);
      return;
    }
    StripModel next = StripModel.of(notebook, bike.get());
    if (next.equals(model)) {
      return;
    }
    model = next;
    showBike();
    layOutSettings(true);
  }

  private void showBike() {
    Button name = new Button(model.bike().name());
    name.getStyleClass().setAll("button", "key", "plain", "card-title");
    name.setStyle("-fx-padding: 0; -fx-min-height: 26px;");
    name.setId("strip-bike-name");
    name.setAccessibleText(desk.text("strip.choose"));
    name.setOnAction(event -> chooseBike(name));
    bikeBox.getChildren().setAll(name);
    bikeBox
        .getChildren()
        .add(
            Keys.label(
                desk.text("strip.hours", desk.words().hours(model.hours())), "soft", "condensed"));
    for (StripModel.Service service : model.services()) {
      String style =
          switch (service.due()) {
            case NOT_YET -> "soft";
            case DUE -> "due";
            case OVERDUE -> "overdue";
          };
      String text =
          desk.text(
              "strip.service",
              service.name(),
              desk.words().hours(service.hours()),
              desk.words().hours(service.interval()));
      bikeBox.getChildren().add(Keys.label(text, "condensed", style));
    }
    bikeBox.setMinWidth(Region.USE_PREF_SIZE);
  }

  private void chooseBike(Node below) {
    ContextMenu menu = new ContextMenu();
    for (Bike bike : desk.notebook().bikes()) {
      MenuItem item = new MenuItem(bike.name());
      item.setOnAction(event -> desk.choose(bike.id()));
      menu.getItems().add(item);
    }
    menu.show(below, javafx.geometry.Side.BOTTOM, 0, 4);
  }

  private double em() {
    return Optional.ofNullable(getScene())
        .map(scene -> ((Label) bikeBox.getChildren().get(bikeBox.getChildren().size() - 1)))
        .map(label -> label.getFont().getSize())
        .orElse(14.0);
  }

  private void layOutSettings(boolean anew) {
    if (model == null || getWidth() <= 0) {
      return;
    }
    double each = TICKED_WIDTH_EM * em() + 4;
    double room = getWidth() - Math.max(BIKE_WIDTH_EM * em(), bikeBox.prefWidth(-1)) - 130;
    int places = unfolded ? model.items().size() : Math.max(2, (int) (room / each));
    if (!anew && places == shownPlaces) {
      return;
    }
    shownPlaces = places;
    List<StripModel.Item> items = model.folded(places);
    settings.getChildren().setAll(items.stream().map(item -> setting(item, each - 4)).toList());
    boolean folds = unfolded || items.size() < model.items().size();
    fold.setVisible(folds);
    fold.setManaged(folds);
    fold.setText(
        unfolded ? desk.text("strip.less") : desk.text("strip.more", model.items().size()));
    settings.setPrefWrapLength(unfolded ? room : items.size() * each);
  }

  private Node setting(StripModel.Item item, double width) {
    Label name = Keys.label(shortName(item), "name");
    Label value = Keys.label(desk.settingWords().brief(item.reading()), "value");
    if (item.setting().dimension() == Dimension.TURNS) {
      value.getStyleClass().add("turns");
    }
    value.setMinWidth(Region.USE_PREF_SIZE);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox top = new HBox(4, name, gap, value);
    top.setAlignment(Pos.BASELINE_LEFT);
    RulerView ruler = new RulerView(false, 1);
    ruler.show(item.ruler());
    Label group = Keys.label(groupName(item), "grid-head");
    VBox box = new VBox(0, group, top, ruler);
    box.setPadding(Insets.EMPTY);
    box.setPrefWidth(width - 10);
    Button button = new Button();
    button.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
    button.setGraphic(box);
    button.setId("strip-" + item.setting().id());
    button.getStyleClass().setAll("button", "strip-setting");
    if (item.reading().legsDiffer()) {
      button.getStyleClass().add("mismatch");
    }
    button.setAccessibleRole(AccessibleRole.BUTTON);
    button.setAccessibleText(
        RulerSentence.of(
            desk.words(),
            desk.settingWords(),
            model.sheet(),
            item.setting(),
            item.reading(),
            List.of()));
    button.setTooltip(
        new javafx.scene.control.Tooltip(
            desk.text(
                "strip.setting",
                item.setting().name(),
                desk.settingWords().reading(item.setting(), item.reading()))));
    button.setOnAction(event -> desk.go(new Place.OfSetting(item.setting().id())));
    return button;
  }

  /** The group stands above the first of its settings. */
  private String groupName(StripModel.Item item) {
    List<StripModel.Item> shown = model.folded(shownPlaces);
    int place = shown.indexOf(item);
    boolean first = place == 0 || shown.get(place - 1).group() != item.group();
    return first ? desk.text("strip.group." + item.group()) : "";
  }

  private String shortName(StripModel.Item item) {
    return item.setting().role() == rutbook.notebook.Role.OTHER
        ? item.setting().name()
        : desk.words().name(item.setting().role());
  }
}
