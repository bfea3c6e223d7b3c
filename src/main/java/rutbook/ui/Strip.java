package rutbook.ui;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.geometry.Side;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.notebook.Bike;
import rutbook.notebook.Notebook;
import rutbook.notebook.SettingId;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.Background;
import rutbook.units.Display;

/**
 * The strip at the top of every page. Where the window is too narrow for every setting it folds to
 * the ones moved most, and unfolds on a touch.
 */
final class Strip extends HBox {
  private static final double GAP = 14;
  private static final double BETWEEN = 4;

  /** What rounding to whole pixels may take from a row, so that its last setting does not wrap. */
  private static final double SLACK = 8;

  private final Desk desk;
  private final VBox bikeBox = new VBox(1);
  private final Region divider = new Region();
  private final FlowPane settings = new FlowPane(BETWEEN, 2);
  private final Button fold;
  private final Map<SettingId, StripSetting> nodes = new HashMap<>();
  private boolean unfolded;
  private Display units;
  private Optional<StripModel> model = Optional.empty();
  private List<StripModel.Item> shown = List.of();

  Strip(Desk desk) {
    super(GAP);
    this.desk = desk;
    setId("strip");
    setMinHeight(USE_PREF_SIZE);
    getStyleClass().add("strip");
    bikeBox.setId("strip-bike");
    bikeBox.setAlignment(Pos.CENTER_LEFT);
    bikeBox.setMinWidth(USE_PREF_SIZE);
    fold = Keys.smallKey("strip-fold", "", this::toggle);
    divider.getStyleClass().add("divider");
    HBox.setHgrow(settings, Priority.ALWAYS);
    settings.setMinWidth(0);
    getChildren().addAll(bikeBox, divider, settings, fold);
    setAlignment(Pos.CENTER_LEFT);
    desk.chosenBike().addListener((chosen, before, now) -> show(desk.notebook()));
  }

  private void toggle() {
    unfolded = !unfolded;
    requestLayout();
  }

  void show(Notebook notebook) {
    Optional<StripModel> next =
        desk.bike().map(bike -> StripModel.of(desk.timeline(bike.id()), desk.notebook().display()));
    if (next.isPresent() && next.equals(model) && notebook.display().equals(units)) {
      return;
    }
    if (!notebook.display().equals(units)) {
      nodes.clear();
    }
    units = notebook.display();
    model = next;
    bikeBox.getChildren().clear();
    divider.setVisible(next.isPresent());
    if (next.isEmpty()) {
      bikeBox.getChildren().add(Keys.label(desk.text("strip.nobike"), "card-title"));
      nodes.clear();
      settings.getChildren().clear();
    } else {
      showBike(next.get());
      showSettings(next.get());
    }
    shown = List.of();
    requestLayout();
  }

  private void showBike(StripModel now) {
    HBox first = new HBox(8);
    first.setAlignment(Pos.BASELINE_LEFT);
    String hours = desk.text("strip.hours", desk.words().hours(now.hours()));
    if (desk.notebook().bikes().size() > 1) {
      Button choose = Keys.smallKey("strip-choose", now.bike().name() + " ▾", () -> {});
      choose.setOnAction(event -> chooseBike(choose));
      choose.getStyleClass().addAll("plain", "strip-choose");
      choose.setAccessibleText(desk.text("strip.choose"));
      first.getChildren().add(choose);
    } else {
      first.getChildren().add(Keys.label(now.bike().name(), "card-title"));
    }
    first.getChildren().add(Keys.label(hours, "condensed", "soft"));
    bikeBox.getChildren().add(first);
    for (StripModel.Service service : now.services()) {
      String style =
          switch (service.due()) {
            case NOT_YET -> "soft";
            case NEARLY, DUE -> "due";
            case OVERDUE -> "overdue";
          };
      String text =
          desk.text(
              "strip.service." + service.due(),
              service.name(),
              desk.words().hours(service.hours()),
              desk.words().hours(service.interval()));
      bikeBox.getChildren().add(Keys.label(text, "condensed", style));
    }
  }

  private void chooseBike(Button below) {
    ContextMenu menu = new ContextMenu();
    for (Bike bike : desk.notebook().bikes()) {
      MenuItem item = new MenuItem(bike.name());
      item.setOnAction(event -> desk.choose(bike.id()));
      menu.getItems().add(item);
    }
    menu.show(below, Side.BOTTOM, 0, 4);
  }

  /** Every setting has its node, shown or folded away; what did not change is left alone. */
  private void showSettings(StripModel now) {
    List<StripSetting> wanted =
        now.items().stream()
            .map(
                item -> {
                  StripSetting node =
                      nodes.computeIfAbsent(item.setting().id(), id -> new StripSetting(desk));
                  node.show(now.sheet(), item);
                  return node;
                })
            .toList();
    if (!settings.getChildren().equals(wanted)) {
      settings.getChildren().setAll(wanted);
      nodes.values().retainAll(wanted);
    }
  }

  @Override
  protected void layoutChildren() {
    model.ifPresent(this::fold);
    fold.setVisible(model.isPresent() && (unfolded || shown.size() < model.get().items().size()));
    super.layoutChildren();
  }

  /** Shows as many settings as fit into one row, or all of them in as many rows as it takes. */
  private void fold(StripModel now) {
    fold.setText(unfolded ? desk.text("strip.less") : desk.text("strip.more", now.items().size()));
    double room =
        getWidth()
            - getInsets().getLeft()
            - getInsets().getRight()
            - bikeBox.prefWidth(-1)
            - fold.prefWidth(-1)
            - 3 * GAP
            - SLACK;
    settings.setPrefWrapLength(Math.max(1, room));
    List<StripModel.Item> wanted =
        unfolded ? now.items() : now.folded(room + BETWEEN, item -> width(item) + BETWEEN);
    if (wanted.equals(shown)) {
      return;
    }
    shown = wanted;
    Background.afterwards(this::requestLayout);
    Optional<StripModel.Group> before = Optional.empty();
    double taken = 0;
    for (StripModel.Item item : now.items()) {
      StripSetting node = nodes.get(item.setting().id());
      boolean here = wanted.contains(item);
      node.setVisible(here);
      node.setManaged(here);
      if (!here) {
        node.head("");
        continue;
      }
      double width = width(item) + BETWEEN;
      boolean newRow = taken + width > room + BETWEEN;
      boolean newGroup = !before.equals(Optional.of(item.group()));
      node.head(newRow || newGroup ? desk.text("strip.group." + item.group()) : "");
      taken = newRow ? width : taken + width;
      before = Optional.of(item.group());
    }
  }

  private double width(StripModel.Item item) {
    return nodes.get(item.setting().id()).prefWidth(-1);
  }
}
