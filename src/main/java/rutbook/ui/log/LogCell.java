package rutbook.ui.log;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.drawing.TrustLine;
import rutbook.notebook.Entry;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.DrawingView;
import rutbook.ui.fx.Once;

/** A row of the Log; its nodes are made once and filled for each entry that scrolls by. */
final class LogCell extends ListCell<LogRow> {
  private static final double TRUST_WIDTH = 72;
  private static final double TRUST_HEIGHT = 22;

  private final Desk desk;
  private final EntryWords entryWords;
  private final Label day = Keys.label("", "soft", "condensed");
  private final Label kind = Keys.label("", "kind");
  private final Label title = Keys.label("", "strong");
  private final Label line = Keys.label("", "soft", "typed");
  private final Label trustNumber = Keys.label("", "number");
  private final DrawingView trust = new DrawingView();
  private final Once<HBox> item = new Once<>(this::item);
  private final Label heading = Keys.label("");
  private final Label count = Keys.label("", "soft", "condensed");
  private final Once<HBox> group = new Once<>(this::group);

  LogCell(Desk desk, EntryWords entryWords) {
    this.desk = desk;
    this.entryWords = entryWords;
    setOnMouseClicked(
        event -> {
          if (!isEmpty() && getItem() instanceof LogRow.Item row) {
            LogPage.open(desk, row.entry());
          }
        });
    setMinWidth(0);
    setPrefWidth(1);
  }

  private HBox group() {
    HBox row = new HBox(10, heading, count);
    row.setAlignment(Pos.BASELINE_LEFT);
    return row;
  }

  private HBox item() {
    day.setMinWidth(Region.USE_PREF_SIZE);
    VBox left = new VBox(day);
    left.setAlignment(Pos.CENTER_LEFT);
    left.getStyleClass().add("log-day");
    kind.getStyleClass().add("log-kind");
    title.setMinWidth(0);
    line.setMinWidth(0);
    VBox middle = new VBox(1, title, line);
    HBox.setHgrow(middle, Priority.ALWAYS);
    middle.setMinWidth(0);
    trustNumber.setMinWidth(36);
    trustNumber.setAlignment(Pos.CENTER_RIGHT);
    trust.setMinSize(TRUST_WIDTH, TRUST_HEIGHT);
    trust.setMaxSize(TRUST_WIDTH, TRUST_HEIGHT);
    HBox row = new HBox(12, left, kind, middle, trust, trustNumber);
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("log-row");
    row.setMinHeight(48);
    return row;
  }

  @Override
  protected void updateItem(LogRow row, boolean empty) {
    super.updateItem(row, empty);
    setText(null);
    if (empty || row == null) {
      setGraphic(null);
      return;
    }
    setGraphic(graphic(row));
  }

  private Node graphic(LogRow row) {
    if (row instanceof LogRow.Season season) {
      group.get().getStyleClass().setAll("log-season");
      heading.getStyleClass().setAll("label", "card-title");
      heading.setText(desk.text("log.season", Integer.toString(season.year())));
      count.setText(
          desk.text(season.entries() == 1 ? "log.count.one" : "log.count", season.entries()));
      return group.get();
    }
    if (row instanceof LogRow.Month month) {
      group.get().getStyleClass().setAll("log-month");
      heading.getStyleClass().setAll("label", "group-title");
      heading.setText(desk.words().month(month.month()));
      count.setText("");
      return group.get();
    }
    fill(((LogRow.Item) row).entry());
    return item.get();
  }

  private void fill(Entry entry) {
    day.setText(desk.words().shortDay(entry.day()));
    kind.setText(entryWords.kind(entry));
    title.setText(entryWords.title(desk.notebook().shelf(), entry));
    line.setText(entryWords.line(desk.notebook().shelf(), entry));
    List<Double> values =
        entry instanceof Entry.Session session
            ? session.motos().stream()
                .filter(moto -> moto.report().trust().isPresent())
                .map(moto -> (double) moto.report().trust().getAsInt())
                .toList()
            : List.of();
    trust.setVisible(!values.isEmpty());
    if (!values.isEmpty()) {
      trust.show(TrustLine.of(values, TRUST_WIDTH, TRUST_HEIGHT));
      double last = values.get(values.size() - 1);
      trustNumber.setText(desk.words().hours(last));
      trustNumber.setAccessibleText(desk.text("moto.trust", trustNumber.getText()));
    } else {
      trustNumber.setText("");
    }
  }
}
