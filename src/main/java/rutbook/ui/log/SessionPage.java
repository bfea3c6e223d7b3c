package rutbook.ui.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.edit.MotoEdit;
import rutbook.edit.SessionEdit;
import rutbook.notebook.Change;
import rutbook.notebook.Conditions;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Report;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Timeline;
import rutbook.ui.Desk;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;

/** One session: its chain of motos, and below it one side of the chosen moto at a time. */
public final class SessionPage extends Page {
  /** The sides of a moto, or of the day, that can be looked at and entered. */
  private enum Tab {
    FEEL,
    CHANGES,
    LAPS,
    NOTES,
    GRID,
    START,
    CHECK;

    String key() {
      return "tab." + name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  private final EntryId id;
  private final Label title = Keys.label("", "page-title");
  private final Label conditions = Keys.label("", "soft");
  private final HBox tabs = new HBox(6);
  private final Map<Tab, ToggleButton> tabKeys = new EnumMap<>(Tab.class);
  private final Chain chain;
  private final VBox below = new VBox(10);
  private final ScrollPane scroll = new ScrollPane();
  private final FeelEntry feel;
  private final SettingsTab changes;
  private final SettingsTab start;
  private final LapsTab laps;
  private final NotesTab notes;
  private final FeelGrid grid;
  private final CheckTab check;
  private SessionModel model;
  private Optional<MotoId> chosen = Optional.empty();
  private Optional<SettingId> wanted = Optional.empty();
  private Tab tab = Tab.FEEL;

  public SessionPage(Desk desk, EntryId id) {
    super(desk);
    this.id = id;
    setId("session-page");
    setSpacing(12);
    chain = new Chain(desk, this::chooseMoto, this::chooseLink);
    feel = new FeelEntry(desk, id);
    changes = new SettingsTab(desk, desk.text("changes.hint"), this::changeSetting);
    start = new SettingsTab(desk, desk.text("start.hint"), this::startWith);
    laps = new LapsTab(desk, this::takeLaps);
    notes = new NotesTab(desk);
    grid = new FeelGrid(desk);
    check = new CheckTab(desk);
    getChildren().addAll(header(), chain, tabs(), below());
  }

  /** Opens at what was changed, with the focus on a setting. */
  public SessionPage atSetting(SettingId setting) {
    tab = Tab.CHANGES;
    wanted = Optional.of(setting);
    return this;
  }

  private Node header() {
    Button back =
        Keys.smallKey(
            "session-back", "← " + desk().text("session.back"), () -> desk().go(new Place.Log()));
    title.setId("session-title");
    title.setMinWidth(0);
    conditions.setMinWidth(0);
    VBox text = new VBox(2, title, conditions);
    text.setMinWidth(0);
    HBox.setHgrow(text, Priority.ALWAYS);
    HBox row =
        new HBox(
            10,
            back,
            text,
            Keys.key("session-check", desk().text("session.check"), () -> open(Tab.CHECK)),
            Keys.mainKey("session-add", desk().text("session.add"), this::newThing));
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  private Node tabs() {
    for (Tab each : Tab.values()) {
      ToggleButton key =
          Keys.choice(each.key().replace('.', '-'), desk().text(each.key()), () -> open(each));
      key.getStyleClass().add("small");
      tabKeys.put(each, key);
      if (each != Tab.START && each != Tab.CHECK) {
        tabs.getChildren().add(key);
      }
    }
    return tabs;
  }

  private Node below() {
    scroll.setContent(below);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setMinHeight(0);
    below.getStyleClass().add("wash");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    return scroll;
  }

  private void open(Tab next) {
    tab = next;
    redraw();
  }

  private void chooseMoto(int place) {
    if (place < 0) {
      open(Tab.START);
      return;
    }
    chosen = Optional.of(model.rides().get(place).moto().id());
    open(tab == Tab.START || tab == Tab.CHECK ? Tab.FEEL : tab);
  }

  private void chooseLink(int place) {
    chosen = Optional.of(model.rides().get(place).moto().id());
    open(Tab.CHANGES);
  }

  @Override
  protected void show(Notebook notebook) {
    Optional<SessionModel> now = SessionModel.of(notebook, id);
    if (now.isEmpty()) {
      getChildren().setAll(Keys.prose(desk().text("session.gone"), "card-title"));
      getChildren()
          .add(
              Keys.key(
                  "session-gone", desk().text("session.back"), () -> desk().go(new Place.Log())));
      return;
    }
    model = now.get();
    if (ride().isEmpty()) {
      chosen =
          model.rides().isEmpty()
              ? Optional.empty()
              : Optional.of(model.rides().get(model.rides().size() - 1).moto().id());
    }
    redraw();
  }

  private Optional<SessionModel.Ride> ride() {
    return model.rides().stream()
        .filter(each -> chosen.equals(Optional.of(each.moto().id())))
        .findFirst();
  }

  private void redraw() {
    title.setText(
        desk().text("session.title", model.track(), desk().words().day(model.session().day())));
    conditions.setText(conditions(model.session()));
    boolean ofTheDay = tab == Tab.START || tab == Tab.CHECK;
    Tab shown = ride().isEmpty() && !ofTheDay && tab != Tab.NOTES ? Tab.START : tab;
    int place = tab == Tab.START ? -1 : ride().map(each -> each.number() - 1).orElse(-1);
    chain.show(model, place, shown == Tab.FEEL);
    tabKeys.forEach((each, key) -> key.setSelected(each == shown));
    List<Node> content = new ArrayList<>();
    content.add(Keys.label(heading(shown), "card-title"));
    content.add(content(shown));
    if (!below
        .getChildren()
        .subList(Math.min(1, below.getChildren().size()), below.getChildren().size())
        .equals(content.subList(1, 2))) {
      below.getChildren().setAll(content);
      scroll.setVvalue(0);
    } else {
      ((Label) below.getChildren().get(0)).setText(heading(shown));
    }
    wanted.ifPresent(setting -> changes.focus(setting));
    wanted = Optional.empty();
  }

  private String heading(Tab shown) {
    Optional<SessionModel.Ride> ride = ride();
    if (shown == Tab.FEEL && ride.isPresent()) {
      return desk()
          .text(
              "feel.question", desk().words().label(ride.get().moto().kind()), ride.get().number());
    }
    return desk().text(shown.key());
  }

  private Node content(Tab shown) {
    Optional<Setup> baseline =
        Timeline.of(desk().notebook(), model.bike().id())
            .baselineOn(model.session().day())
            .map(Entry.Baseline::setup);
    switch (shown) {
      case FEEL -> {
        FeelModel.of(desk().notebook(), model.session(), ride().orElseThrow().moto().id())
            .ifPresent(feel::show);
        return feel;
      }
      case CHANGES -> {
        SessionModel.Ride ride = ride().orElseThrow();
        changes.show(model.sheet(), ride.before(), ride.setup(), baseline);
        return changes;
      }
      case LAPS -> {
        laps.show(ride().orElseThrow());
        return laps;
      }
      case NOTES -> {
        notes.show(model, ride());
        return notes;
      }
      case GRID -> {
        grid.show(model);
        return grid;
      }
      case START -> {
        Setup left = Timeline.of(desk().notebook(), model.bike().id()).before(id);
        start.show(
            model.sheet(),
            model.first() ? model.session().start() : left,
            model.session().start(),
            baseline);
        return start;
      }
      default -> {
        check.show(model);
        return check;
      }
    }
  }

  private String conditions(Entry.Session session) {
    Conditions now = session.conditions();
    Stream<String> parts =
        Stream.of(
                now.ground().map(desk().words()::name),
                now.moisture().map(desk().words()::name),
                now.roughness().isPresent()
                    ? Optional.of(desk().text("session.roughness", now.roughness().getAsInt()))
                    : Optional.<String>empty(),
                now.air().map(desk().settingWords()::amount),
                session.head().meter().map(desk().settingWords()::amount))
            .flatMap(Optional::stream);
    String text = parts.collect(Collectors.joining(" · "));
    return text.isEmpty() ? desk().text("session.nothing") : text;
  }

  /** Adds a moto and opens its feel: what was changed before it is entered on its link. */
  @Override
  protected void newThing() {
    MotoId moto = new MotoId(desk().ids().next());
    desk()
        .make(
            new SessionEdit.AddMoto(
                id, new Moto(moto, MotoKind.MOTO, List.of(), Report.EMPTY, Optional.empty(), "")));
    chosen = Optional.of(moto);
    open(Tab.FEEL);
  }

  /** Back to where it was before the moto means that it was not changed. */
  private void changeSetting(Setting setting, Reading to) {
    SessionModel.Ride ride = ride().orElseThrow();
    Reading before = SessionModel.reading(ride.before(), setting);
    if (to.sameAs(before)) {
      desk().make(new MotoEdit.LeaveSetting(id, ride.moto().id(), setting.id()));
    } else {
      desk().make(new MotoEdit.ChangeSetting(id, ride.moto().id(), Change.of(setting.id(), to)));
    }
  }

  private void startWith(Setting setting, Reading to) {
    desk().make(new SessionEdit.StartWith(id, Placed.set(setting.id(), to)));
  }

  private void takeLaps(List<rutbook.notebook.Lap> next) {
    ride().ifPresent(ride -> desk().make(new MotoEdit.Laps(id, ride.moto().id(), next)));
  }
}
