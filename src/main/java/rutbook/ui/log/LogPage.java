package rutbook.ui.log;

import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import rutbook.drawing.TrustLine;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Shelf;
import rutbook.ui.Desk;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.DrawingView;
import rutbook.ui.fx.KeyedList;

/** All entries of the notebook in time order, found by track, bike, kind and text. */
public final class LogPage extends Page {
  private static final double TRUST_WIDTH = 260;
  private static final double TRUST_HEIGHT = 34;
  private final EntryWords entryWords;
  private final ObservableList<LogRow> rows = FXCollections.observableArrayList();
  private final ListView<LogRow> list = new ListView<>(rows);
  private final Label count = Keys.label("", "soft", "condensed");
  private final DrawingView trust = new DrawingView();
  private final VBox trustBox;
  private final StackPane body = new StackPane();
  private final StackPane newSession = new StackPane();
  private final Button make;
  private final LogFilters filters;
  private LogFilter filter = LogFilter.ALL;
  private Notebook shown;

  public LogPage(Desk desk) {
    super(desk);
    setId("log-page");
    setSpacing(12);
    entryWords = new EntryWords(desk.words(), desk.settingWords());
    make = Keys.mainKey("log-new", desk.text("log.new"), this::newThing);
    trustBox = new VBox(2, trust, Keys.label(desk.text("log.trust"), "soft", "condensed"));
    filters = new LogFilters(desk);
    filters.whenChanged(this::filter);
    getChildren().addAll(header(), newSession, filters, body);
    VBox.setVgrow(body, Priority.ALWAYS);
    body.setMinHeight(0);
    list();
    newSession.setManaged(false);
  }

  private Node header() {
    VBox title = new VBox(2, Keys.label(desk().text("log.title"), "page-title"), count);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    trust.setId("log-trust");
    trust.setMinSize(TRUST_WIDTH, TRUST_HEIGHT);
    HBox row = new HBox(20, title, gap, trustBox, make);
    row.setAlignment(Pos.TOP_LEFT);
    return row;
  }

  private void list() {
    list.setId("log-list");
    list.setAccessibleText(desk().text("log.title"));
    list.getStyleClass().add("log-list");
    list.setCellFactory(view -> new LogCell(desk(), entryWords));
    list.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER
              && list.getSelectionModel().getSelectedItem() instanceof LogRow.Item item) {
            open(desk(), item.entry());
            event.consume();
          }
        });
    body.getChildren().setAll(list);
  }

  /** Where an entry is looked at: sessions and rebuilds have a page, the rest is all in its row. */
  static void open(Desk desk, Entry entry) {
    if (entry instanceof Entry.Session) {
      desk.go(new Place.Session(entry.id()));
    } else if (entry instanceof Entry.RebuildJob) {
      desk.go(new Place.Job(entry.id()));
    }
  }

  private void filter() {
    LogFilter wanted = filters.wanted();
    if (!wanted.equals(filter)) {
      filter = wanted;
      refresh();
    }
  }

  @Override
  protected void show(Notebook notebook) {
    shown = notebook;
    filters.show(notebook);
    make.setDisable(notebook.bikes().isEmpty());
    refresh();
  }

  private void refresh() {
    if (shown == null) {
      return;
    }
    Notebook notebook = shown;
    LogFilter wanted = filter;
    Shelf shelf = notebook.shelf();
    desk()
        .background()
        .run(
            "log",
            () -> LogModel.of(notebook, wanted, entry -> entryWords.searched(shelf, entry)),
            this::show,
            fault -> {
              throw new IllegalStateException(fault);
            });
  }

  private void show(LogModel model) {
    KeyedList.update(rows, model.rows(), LogRow::key);
    count.setText(
        model.shown() == model.total()
            ? desk().text(model.total() == 1 ? "log.count.one" : "log.count", model.total())
            : desk().text("log.count.of", model.shown(), model.total()));
    trustBox.setVisible(model.trust().size() > 1);
    trust.show(TrustLine.of(model.trust(), TRUST_WIDTH, TRUST_HEIGHT));
    trust.setAccessibleText(desk().text("log.trust"));
    if (model.shown() > 0) {
      body.getChildren().setAll(list);
    } else {
      body.getChildren().setAll(model.total() == 0 || filter.isAll() ? empty() : nothingFits());
    }
  }

  private Node empty() {
    if (desk().bike().isPresent()) {
      return message(desk().text("log.empty.title"), desk().text("log.empty.text"));
    }
    VBox box = message(desk().text("log.empty.title"), desk().text("log.empty.nobike"));
    box.getChildren()
        .add(
            Keys.mainKey(
                "log-bike",
                desk().text("log.empty.make"),
                () -> desk().go(new Place.Bike(Place.BikePart.SETTINGS))));
    return box;
  }

  private Node nothingFits() {
    VBox box = message(desk().text("log.none.title"), desk().text("log.none.text"));
    box.getChildren().add(Keys.key("log-clear", desk().text("log.clear"), this::clear));
    return box;
  }

  private void clear() {
    filters.clear();
    filter();
  }

  private static VBox message(String title, String text) {
    Label prose = Keys.prose(text, "soft");
    prose.setMaxWidth(560);
    VBox box = new VBox(8, Keys.label(title, "card-title"), prose);
    box.setAlignment(Pos.TOP_LEFT);
    box.getStyleClass().add("wash");
    box.setId("log-message");
    return box;
  }

  /** Opens the few questions that a new session needs. */
  @Override
  protected void newThing() {
    if (desk().bike().isEmpty()) {
      return;
    }
    NewSession form = new NewSession(desk(), desk().bike().get(), this::closeForm);
    newSession.getChildren().setAll(form);
    newSession.setManaged(true);
    form.choosing().addListener((choosing, before, now) -> giveRoom(now));
    form.requestFocus();
  }

  /** While a start is chosen the entries give it their place. */
  private void giveRoom(boolean all) {
    for (Node each : List.of(filters, body)) {
      each.setVisible(!all);
      each.setManaged(!all);
    }
    newSession.setMinHeight(all ? 0 : USE_COMPUTED_SIZE);
    VBox.setVgrow(newSession, all ? Priority.ALWAYS : Priority.NEVER);
  }

  private void closeForm() {
    giveRoom(false);
    newSession.getChildren().clear();
    newSession.setManaged(false);
  }

  @Override
  protected void search() {
    filters.search();
  }

  Optional<LogRow> selected() {
    return Optional.ofNullable(list.getSelectionModel().getSelectedItem());
  }
}
