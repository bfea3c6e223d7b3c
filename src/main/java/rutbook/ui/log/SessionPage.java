package rutbook.ui.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.edit.MotoEdit;
import rutbook.edit.SessionEdit;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.Report;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.ui.Desk;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Severity;

/** One day at one track: its motos as a chain, with what was changed on the link between two. */
public final class SessionPage extends Page {
  private static final double CARD = 280;

  private final EntryId id;
  private Optional<SettingId> setting = Optional.empty();

  public SessionPage(Desk desk, EntryId id) {
    super(desk);
    this.id = id;
    setId("session-page");
    setSpacing(12);
  }

  /** Shows what was done to one setting: its changes stand out on the links. */
  public SessionPage atSetting(SettingId chosen) {
    setting = Optional.of(chosen);
    return this;
  }

  @Override
  protected void show(Notebook notebook) {
    Optional<Entry.Session> session =
        notebook.entry(id).filter(Entry.Session.class::isInstance).map(Entry.Session.class::cast);
    if (session.isEmpty()) {
      desk().go(new Place.Log());
      return;
    }
    Entry.Session day = session.get();
    getChildren().setAll(header(notebook, day), chain(notebook, day));
    if (!day.motos().isEmpty()) {
      getChildren().add(entry(day, day.motos().get(day.motos().size() - 1)));
    }
  }

  private Node header(Notebook notebook, Entry.Session day) {
    EntryWords words = new EntryWords(desk().words(), desk().settingWords());
    VBox title =
        new VBox(
            2,
            Keys.label(words.title(notebook.shelf(), day), "page-title"),
            Keys.label(words.line(notebook.shelf(), day), "soft"));
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox header =
        new HBox(
            8,
            title,
            gap,
            Keys.key("session-back", desk().text("session.back"), () -> desk().go(new Place.Log())),
            Keys.mainKey("session.add", desk().text("session.add-moto"), this::addMoto));
    header.setAlignment(Pos.CENTER_LEFT);
    return header;
  }

  private void addMoto() {
    Moto next =
        new Moto(
            new MotoId(desk().ids().next()),
            MotoKind.MOTO,
            List.of(),
            Report.EMPTY,
            Optional.empty(),
            "");
    desk().make(new SessionEdit.AddMoto(id, next));
  }

  @Override
  protected void newThing() {
    addMoto();
  }

  private Node chain(Notebook notebook, Entry.Session day) {
    Sheet sheet = notebook.shelf().bike(day.bike()).orElseThrow().sheetOn(day.day());
    HBox chain = new HBox();
    chain.setAlignment(Pos.CENTER_LEFT);
    Setup before = day.start();
    for (int i = 0; i < day.motos().size(); i++) {
      Moto moto = day.motos().get(i);
      if (i > 0 || !moto.changes().isEmpty()) {
        chain.getChildren().addAll(bar(), link(sheet, before, moto), bar());
      }
      chain.getChildren().add(card(moto, i + 1));
      before = day.setupOf(i);
    }
    ScrollPane scroll = new ScrollPane(chain);
    scroll.setFitToHeight(true);
    scroll.setMinHeight(190);
    return scroll;
  }

  private static Node bar() {
    Region bar = new Region();
    bar.getStyleClass().add("chain-bar");
    return bar;
  }

  private Node link(Sheet sheet, Setup before, Moto moto) {
    VBox link = new VBox(2);
    link.setAlignment(Pos.CENTER);
    link.getStyleClass().add("chain-link");
    link.setMaxHeight(Region.USE_PREF_SIZE);
    link.setMinWidth(Region.USE_PREF_SIZE);
    if (moto.changes().isEmpty()) {
      link.getChildren().add(Keys.label(desk().text("chain.nothing"), "condensed"));
    }
    for (Change change : moto.changes()) {
      Setting moved = sheet.setting(change.setting()).orElseThrow();
      link.getChildren()
          .addAll(
              Keys.label(
                  moved.name(),
                  "condensed",
                  setting.equals(Optional.of(moved.id())) ? "blue" : "soft"),
              Keys.label(
                  before
                      .reading(change.setting())
                      .map(from -> desk().settingWords().change(moved, from, change.to()))
                      .orElseGet(() -> desk().settingWords().reading(moved, change.to())),
                  "number"));
    }
    return link;
  }

  private Node card(Moto moto, int number) {
    VBox card = new VBox(6);
    card.getStyleClass().add("card");
    card.setMinWidth(CARD);
    card.setPrefWidth(CARD);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    card.getChildren()
        .add(
            new HBox(
                Keys.label(
                    desk().text("moto.title", desk().words().name(moto.kind()), number),
                    "card-title"),
                gap,
                Keys.label(trust(moto), "condensed", "soft")));
    for (Feel feel : moto.report().feel()) {
      Region between = new Region();
      HBox.setHgrow(between, Priority.ALWAYS);
      card.getChildren()
          .add(
              new HBox(
                  6,
                  Keys.label(said(feel.key()), "condensed"),
                  between,
                  new Severity(feel.severity(), desk().text("moto.gone"))));
    }
    if (!moto.note().isEmpty()) {
      card.getChildren().add(Keys.label(moto.note(), "soft"));
    }
    return card;
  }

  private String trust(Moto moto) {
    OptionalInt trust = moto.report().trust();
    return trust.isPresent()
        ? desk().text("moto.trust", trust.getAsInt())
        : desk().text("moto.trust.none");
  }

  private String said(Feel.Key key) {
    return desk().words().name(key.end())
        + " "
        + desk().words().name(key.symptom())
        + ", "
        + desk().words().name(key.section());
  }

  /** The newest moto: each complaint of the day by one touch, and the trust. */
  private Node entry(Entry.Session day, Moto moto) {
    VBox entry =
        new VBox(
            8,
            Keys.label(
                desk().text("feel.question", desk().words().name(moto.kind()), day.motos().size()),
                "card-title"));
    entry.getStyleClass().add("wash");
    for (Feel.Key key : lately(day)) {
      entry.getChildren().add(severities(moto, key));
    }
    entry.getChildren().add(trusts(moto));
    ScrollPane scroll = new ScrollPane(entry);
    scroll.setFitToWidth(true);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    return scroll;
  }

  /** What was mentioned in the last three motos of the day. */
  private static List<Feel.Key> lately(Entry.Session day) {
    List<Feel.Key> keys = new ArrayList<>();
    List<Moto> motos = day.motos();
    for (Moto moto : motos.subList(Math.max(0, motos.size() - 3), motos.size())) {
      for (Feel feel : moto.report().feel()) {
        if (!keys.contains(feel.key())) {
          keys.add(feel.key());
        }
      }
    }
    return keys;
  }

  private Node severities(Moto moto, Feel.Key key) {
    HBox row = new HBox(6, Keys.label(said(key), "condensed"));
    ((Region) row.getChildren().get(0)).setMinWidth(CARD);
    row.setAlignment(Pos.CENTER_LEFT);
    OptionalInt now =
        moto.report()
            .feel(key)
            .map(feel -> OptionalInt.of(feel.severity()))
            .orElse(OptionalInt.empty());
    for (int i = 0; i <= 5; i++) {
      int severity = i;
      String text = i == 0 ? desk().text("moto.gone") : String.valueOf(i);
      row.getChildren()
          .add(
              digit(
                  text,
                  said(key) + " " + text,
                  now.equals(OptionalInt.of(i)),
                  () -> rate(moto, key, severity)));
    }
    return row;
  }

  private void rate(Moto moto, Feel.Key key, int severity) {
    Feel feel =
        moto.report()
            .feel(key)
            .map(before -> before.withSeverity(severity))
            .orElseGet(() -> Feel.of(key.end(), key.section(), key.symptom(), severity));
    desk().make(new MotoEdit.NoteFeel(id, moto.id(), feel));
  }

  private Node trusts(Moto moto) {
    FlowPane row = new FlowPane(6, 6, Keys.label(desk().text("feel.trust"), "group-title"));
    for (int i = 1; i <= 10; i++) {
      int trust = i;
      row.getChildren()
          .add(
              digit(
                  String.valueOf(i),
                  desk().text("moto.trust", i),
                  moto.report().trust().equals(OptionalInt.of(i)),
                  () -> desk().make(new MotoEdit.Trust(id, moto.id(), OptionalInt.of(trust)))));
    }
    return row;
  }

  private static ToggleButton digit(String text, String spoken, boolean on, Runnable action) {
    ToggleButton digit = new ToggleButton(text);
    digit.getStyleClass().setAll("toggle-button", "key", "digit");
    digit.setSelected(on);
    digit.setAccessibleText(spoken);
    digit.setOnAction(event -> action.run());
    return digit;
  }
}
