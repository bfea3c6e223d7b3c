package rutbook.ui.bike;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import rutbook.notebook.Bike;
import rutbook.notebook.BikeId;
import rutbook.notebook.Notebook;
import rutbook.ui.Desk;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;

/** The bike: its sheet, made and changed by hand, and what is reckoned from it. */
public final class BikePage extends Page {
  /** A page lower than this, in heights of text, has no room for a title. */
  private static final double LOW_EM = 42;

  private final BikeDesk bikeDesk;
  private final Label title = Keys.label("", "page-title");
  private final Label about = Keys.label("", "soft");
  private final ComboBox<LocalDate> sheets = new ComboBox<>();
  private final FlowPane tabs = new FlowPane(6, 6);
  private final Map<Place.BikePart, ToggleButton> tabKeys = new EnumMap<>(Place.BikePart.class);
  private final Map<Place.BikePart, Section> sections = new EnumMap<>(Place.BikePart.class);
  private final Node header;
  private final HBox tabRow;
  private final StackPane body = new StackPane();
  private Place.BikePart part;
  private Optional<LocalDate> from = Optional.empty();
  private Optional<BikeId> shown = Optional.empty();
  private Optional<GuidedStart> start = Optional.empty();
  private boolean startedForNone;
  private boolean telling;

  public BikePage(Desk desk, Place.BikePart part) {
    super(desk);
    this.part = part;
    this.bikeDesk = new BikeDesk(desk, this::showSheet, this::startAnother);
    setId("bike-page");
    setSpacing(10);
    header = header();
    tabs();
    HBox.setHgrow(tabs, Priority.ALWAYS);
    tabRow = new HBox(10, tabs, sheets);
    heightProperty().addListener((height, before, now) -> arrange());
    body.setMinHeight(0);
    VBox.setVgrow(body, Priority.ALWAYS);
    ChangeListener<Optional<BikeId>> chosen = (bike, before, now) -> show(desk.notebook());
    sceneProperty()
        .addListener(
            (scene, before, now) -> {
              desk.chosenBike().removeListener(chosen);
              if (now != null) {
                desk.chosenBike().addListener(chosen);
              }
            });
  }

  private Node header() {
    title.setId("bike-title");
    title.setMinWidth(0);
    about.setMinWidth(0);
    VBox text = new VBox(2, title, about);
    text.setMinWidth(0);
    sheets.setMinWidth(ComboBox.USE_PREF_SIZE);
    sheets.setId("bike-sheets");
    sheets.setAccessibleText(bikeDesk.text("sheets.choose"));
    sheets.getStyleClass().add("large-target");
    sheets.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(LocalDate day) {
            return day == null ? "" : bikeDesk.words().day(day);
          }

          @Override
          public LocalDate fromString(String text) {
            throw new UnsupportedOperationException(text);
          }
        });
    sheets.valueProperty().addListener((value, before, now) -> chooseSheet(now));
    return text;
  }

  private void tabs() {
    for (Place.BikePart each : Place.BikePart.values()) {
      String name = each.name().toLowerCase(Locale.ROOT);
      ToggleButton key =
          Keys.choice("bike-tab-" + name, bikeDesk.text("tab." + each.name()), () -> open(each));
      key.getStyleClass().add("tab-key");
      tabKeys.put(each, key);
      tabs.getChildren().add(key);
    }
  }

  private void open(Place.BikePart next) {
    part = next;
    redraw();
  }

  private void chooseSheet(LocalDate day) {
    if (!telling && day != null) {
      from = Optional.of(day);
      show(desk().notebook());
    }
  }

  private void showSheet(LocalDate day) {
    part = Place.BikePart.SETTINGS;
    chooseSheet(day);
  }

  private void startAnother() {
    start = Optional.of(new GuidedStart(bikeDesk, this::made, this::leaveStart));
    redraw();
  }

  /** The new bike is the one that strip and pages are about from now on. */
  private void made(BikeId bike) {
    start = Optional.empty();
    part = Place.BikePart.SETTINGS;
    if (desk().chosenBike().get().equals(Optional.of(bike))) {
      show(desk().notebook());
    } else {
      desk().choose(bike);
    }
  }

  private void leaveStart() {
    start = Optional.empty();
    redraw();
  }

  @Override
  protected void show(Notebook notebook) {
    Optional<Bike> bike = desk().bike();
    if (!bike.map(Bike::id).equals(shown)) {
      shown = bike.map(Bike::id);
      from = Optional.empty();
      sections.clear();
    }
    bike.ifPresent(each -> bikeDesk.show(BikeModel.of(notebook, each, from)));
    redraw();
  }

  private void redraw() {
    boolean none = desk().bike().isEmpty();
    if (none && start.isEmpty()) {
      start = Optional.of(new GuidedStart(bikeDesk, this::made, this::leaveStart));
      startedForNone = true;
    } else if (!none && startedForNone) {
      start = Optional.empty();
      startedForNone = false;
    }
    if (start.isPresent()) {
      start.get().mayLeave(!none);
      body.getChildren().setAll(start.get());
      getChildren().setAll(body);
      return;
    }
    BikeModel model = bikeDesk.model();
    title.setText(model.bike().name());
    about.setText(about(model));
    showSheets(model);
    tabKeys.forEach((each, key) -> key.setSelected(each == part));
    Section section = sections.computeIfAbsent(part, this::section);
    section.show(model);
    if (!body.getChildren().contains(section)) {
      body.getChildren().setAll(section);
    }
    arrange();
  }

  /** Where the window is low the strip names the bike, and the room goes to what is shown. */
  private void arrange() {
    boolean low = getHeight() > 0 && getHeight() < LOW_EM * desk().em();
    List<Node> wanted = low ? List.of(tabRow, body) : List.of(header, tabRow, body);
    if (start.isEmpty() && !getChildren().equals(wanted)) {
      getChildren().setAll(wanted);
    }
  }

  /** Why the sheet began; since when, unless the list of sheets beside it says so. */
  private String about(BikeModel model) {
    String reason = model.sheet().reason();
    boolean listed = model.bike().sheets().size() > 1;
    if (model.isLatest() && (listed || reason.isBlank())) {
      return reason.isBlank() ? bikeDesk.text("sheet.from", model.sheet().from()) : reason;
    }
    String key = model.isLatest() ? "sheet.about" : "sheet.about.older";
    String known = reason.isBlank() ? bikeDesk.text("sheet.no.reason") : reason;
    return bikeDesk.text(key, model.sheet().from(), known);
  }

  private void showSheets(BikeModel model) {
    telling = true;
    sheets.getItems().setAll(model.bike().sheets().stream().map(sheet -> sheet.from()).toList());
    sheets.setValue(model.sheet().from());
    boolean several = model.bike().sheets().size() > 1;
    sheets.setVisible(several);
    sheets.setManaged(several);
    telling = false;
  }

  private Section section(Place.BikePart of) {
    return switch (of) {
      case SETTINGS -> new SettingsSection(bikeDesk);
      case FORK -> new ForkSection(bikeDesk);
      case SHOCK -> new ShockSection(bikeDesk);
      case STEERING -> new SteeringSection(bikeDesk);
      case OIL -> new OilSection(bikeDesk);
      case TORQUES -> new TorqueSection(bikeDesk);
      case SERVICE -> new ServiceSection(bikeDesk);
      case HISTORY -> new HistorySection(bikeDesk);
    };
  }

  @Override
  protected void newThing() {
    if (start.isEmpty() && sections.containsKey(part)) {
      sections.get(part).newThing();
    }
  }
}
