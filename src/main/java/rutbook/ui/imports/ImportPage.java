package rutbook.ui.imports;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import rutbook.imports.DayOrder;
import rutbook.imports.Grid;
import rutbook.imports.NotTaken;
import rutbook.notebook.Notebook;
import rutbook.ui.Desk;
import rutbook.ui.Page;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.words.ImportWords;

/**
 * A table before it is taken: at the left what each column is, which can be changed, at the right
 * what would be taken and what would not, and why. Nothing is in the notebook before "Take".
 */
abstract class ImportPage extends Page {
  private static final int SAMPLES = 3;
  private static final int MOST_SHOWN = 200;

  private final ImportWords words;
  private final VBox columns = new VBox(8);
  private final FlowPane options = new FlowPane(14, 8);
  private final VBox found = new VBox(6);
  private final Label error = Keys.prose("", "error");
  private final Button take;
  private Grid grid;

  ImportPage(Desk desk, String id, String titleKey, Grid grid, Place back) {
    super(desk);
    this.grid = grid;
    this.words = new ImportWords(desk.phrases());
    setId(id);
    setSpacing(12);
    take = Keys.mainKey("import-take", words.text("take"), this::take);
    Button leave = Keys.smallKey("import-leave", "← " + words.text("leave"), () -> desk.go(back));
    Label title = Keys.prose(words.text(titleKey), "page-title");
    title.setMinWidth(0);
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    HBox head = new HBox(10, leave, title, take);
    head.setAlignment(Pos.CENTER_LEFT);
    error.setId("import-error");
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    found.setId("import-found");
    VBox left = new VBox(10, options, Keys.label(words.text("columns"), "card-title"), columns);
    HBox both = new HBox(16, Scrolling.column(left, 11), Scrolling.column(found, 9));
    both.setMinHeight(0);
    VBox.setVgrow(both, Priority.ALWAYS);
    getChildren().addAll(head, error, both);
  }

  final ImportWords words() {
    return words;
  }

  final Grid grid() {
    return grid;
  }

  /** The table read otherwise: what its columns are is found anew. */
  final void read(Grid other) {
    grid = other;
    guess();
    redraw();
  }

  /** Finds out what the columns are, as remembered or by looking. */
  abstract void guess();

  /** What the rider is asked besides the columns. */
  abstract List<Node> questions();

  /** The choice of what a column is. */
  abstract ComboBox<?> choice(int column);

  /** Shows what would be taken. */
  abstract void look();

  abstract void take();

  @Override
  protected void show(Notebook notebook) {
    redraw();
  }

  final void redraw() {
    options.getChildren().setAll(questions());
    columns.getChildren().clear();
    for (int i = 0; i < grid.columns(); i++) {
      columns.getChildren().add(row(i));
    }
    found.getChildren().clear();
    look();
  }

  private Node row(int column) {
    String name =
        grid.heading(column).isEmpty()
            ? words.text("column", column + 1)
            : desk().phrases().safe(grid.heading(column));
    List<String> samples = grid.values(column).stream().limit(SAMPLES).toList();
    VBox text =
        new VBox(
            2,
            Keys.prose(name, "strong"),
            Keys.prose(desk().phrases().safe(String.join(" · ", samples)), "soft"));
    text.setMinWidth(0);
    text.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(text, Priority.ALWAYS);
    ComboBox<?> choice = choice(column);
    choice.setPrefWidth(desk().em() * 15);
    HBox row = new HBox(10, text, choice);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  /** A choice of one of several things, in words. */
  final <T> ComboBox<T> choose(
      String id,
      String said,
      List<T> all,
      Optional<T> now,
      Function<T, String> text,
      Consumer<T> chosen) {
    ComboBox<T> box = new ComboBox<>();
    box.setId(id);
    box.getStyleClass().add("large-target");
    box.setAccessibleText(said);
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(T value) {
            return value == null ? "" : text.apply(value);
          }

          @Override
          public T fromString(String typed) {
            return null;
          }
        });
    box.getItems().setAll(all);
    now.ifPresent(box::setValue);
    box.setOnAction(event -> chosen.accept(box.getValue()));
    box.setMinWidth(USE_PREF_SIZE);
    return box;
  }

  /** A question with its choice below. */
  final Node asked(String key, Node choice) {
    Label label = Keys.prose(words.text(key), "group-title");
    label.setLabelFor(choice);
    return new VBox(3, label, choice);
  }

  /** The order of day and month, where a table may be read in two ways. */
  final Node order(Optional<DayOrder> now, Consumer<DayOrder> chosen) {
    return asked(
        "order",
        choose(
            "import-order",
            words.text("order"),
            List.of(DayOrder.values()),
            now,
            order -> words.text("order." + order.name()),
            chosen));
  }

  final Node headings() {
    return tick(
        "import-headings", "headings", grid.hasHeadings(), first -> read(grid.withHeadings(first)));
  }

  final CheckBox tick(String id, String key, boolean now, Consumer<Boolean> chosen) {
    CheckBox tick = new CheckBox(words.text(key));
    tick.setId(id);
    tick.getStyleClass().add("large-target");
    tick.setSelected(now);
    tick.setOnAction(event -> chosen.accept(tick.isSelected()));
    return tick;
  }

  /** What is taken, what is asked first, and what is not taken. */
  final void show(String heading, List<String> taken, List<NotTaken> not, boolean ready) {
    take.setDisable(!ready);
    Label head = Keys.prose(heading, "card-title");
    head.setId("import-heading");
    found.getChildren().setAll(head);
    taken.stream().limit(MOST_SHOWN).forEach(each -> found.getChildren().add(Keys.prose(each)));
    more(taken.size());
    if (!not.isEmpty()) {
      Label label = Keys.prose(words.text("not", not.size()), "card-title");
      label.setId("import-not");
      found.getChildren().add(label);
      not.stream()
          .limit(MOST_SHOWN)
          .forEach(each -> found.getChildren().add(Keys.prose(words.notTaken(each), "soft")));
      more(not.size());
    }
  }

  private void more(int all) {
    if (all > MOST_SHOWN) {
      found.getChildren().add(Keys.prose(words.text("more", all - MOST_SHOWN), "soft"));
    }
  }

  final void refuse(String sentence) {
    error.setText(sentence);
  }

  final void remember(String kind, String mapping) {
    desk().outside().remember(kind + grid.fingerprint(), mapping);
  }

  final Optional<String> remembered(String kind) {
    return desk().outside().mapping(kind + grid.fingerprint());
  }
}
