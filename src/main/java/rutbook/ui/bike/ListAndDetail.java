package rutbook.ui.bike;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import rutbook.ui.controls.RowKey;
import rutbook.ui.controls.Scrolling;

/** A list at the left, and at the right what was touched in it, or what stands there otherwise. */
final class ListAndDetail extends HBox {
  private static final double LEAST_DETAIL = 370;
  private static final double MOST_DETAIL = 540;
  private static final double DETAIL_SHARE = 0.38;

  private final VBox list = new VBox(2);
  private final ScrollPane scroll = Scrolling.withStop(list);
  private final StackPane detail = new StackPane();
  private final Map<String, RowKey> keys = new HashMap<>();
  private List<Row> rows = List.of();
  private Optional<String> chosen = Optional.empty();
  private Object open;
  private Node otherwise = new VBox();

  /**
   * A line of the list.
   *
   * @param value what the detail is about; while it stays equal, the detail stays as it is
   * @param detail makes the detail, when the row is touched
   */
  record Row(String id, Object value, Node face, String said, Supplier<Node> detail) {}

  /** A heading between rows. */
  record Part(Optional<Node> heading, List<Row> rows) {
    Part {
      rows = List.copyOf(rows);
    }
  }

  ListAndDetail() {
    super(16);
    scroll.getStyleClass().add("list-and-detail");
    scroll.setPrefWidth(0);
    HBox.setHgrow(scroll, Priority.ALWAYS);
    detail.setMinSize(LEAST_DETAIL, 0);
    detail.prefWidthProperty().bind(widthProperty().multiply(DETAIL_SHARE));
    detail.setMaxWidth(MOST_DETAIL);
    detail.setAlignment(Pos.TOP_LEFT);
    getChildren().addAll(scroll, detail);
    setMinHeight(0);
    VBox.setVgrow(this, Priority.ALWAYS);
  }

  /** What stands at the right while no row is chosen. */
  void otherwise(Node node) {
    boolean showing = detail.getChildren().contains(otherwise) || detail.getChildren().isEmpty();
    otherwise = node;
    if (showing) {
      detail.getChildren().setAll(node);
    }
  }

  void show(List<Part> parts) {
    rows = parts.stream().flatMap(part -> part.rows().stream()).toList();
    list.getChildren().clear();
    for (Part part : parts) {
      part.heading().ifPresent(list.getChildren()::add);
      part.rows().forEach(row -> list.getChildren().add(key(row)));
    }
    keys.keySet().retainAll(rows.stream().map(Row::id).toList());
    Optional<Row> row = row();
    if (chosen.isPresent() && row.isEmpty()) {
      close();
    } else if (row.isPresent() && !row.get().value().equals(open) && !isHalfTyped()) {
      open(row.get());
    }
  }

  private RowKey key(Row row) {
    RowKey key = keys.computeIfAbsent(row.id(), RowKey::new);
    key.show(row.face(), row.said(), () -> choose(row.id()));
    key.select(chosen.equals(Optional.of(row.id())));
    return key;
  }

  private boolean isHalfTyped() {
    return detail.getChildren().stream()
        .anyMatch(node -> node instanceof Form form && form.touched());
  }

  private Optional<Row> row() {
    return rows.stream().filter(row -> chosen.equals(Optional.of(row.id()))).findFirst();
  }

  /** Opens a row as a touch would; a second touch closes it. */
  void choose(String id) {
    if (chosen.equals(Optional.of(id))) {
      close();
      return;
    }
    chosen = Optional.of(id);
    row().ifPresent(this::open);
  }

  private void open(Row row) {
    open = row.value();
    Node made = row.detail().get();
    detail.getChildren().setAll(made);
    select();
    made.requestFocus();
  }

  /** Shows something that is no row yet: a form for a new thing. */
  void open(Node made) {
    chosen = Optional.empty();
    detail.getChildren().setAll(made);
    select();
    made.requestFocus();
  }

  /** Back to what stands there otherwise; the focus stays where the rider was in the list. */
  void close() {
    Optional<String> was = chosen;
    chosen = Optional.empty();
    open = null;
    detail.getChildren().setAll(otherwise);
    select();
    was.map(keys::get).ifPresent(Node::requestFocus);
  }

  private void select() {
    keys.forEach((id, key) -> key.select(chosen.equals(Optional.of(id))));
  }
}
