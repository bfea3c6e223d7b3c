package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.ui.controls.Ask;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;

/**
 * Questions about one thing, and keys to save or leave it. Enter saves, Escape leaves; what is
 * refused stays typed, with the reason below it.
 */
abstract class Form extends VBox {
  /** Room for the scroll bar, so that nothing moves when it comes. */
  private static final double SCROLL_BAR = 14;

  private final BikeDesk desk;
  private final Runnable close;
  private final Label heading;
  private final GridPane grid = new GridPane();
  private final ScrollPane scroll = Scrolling.withStop(grid);
  private final List<Ask<?>> asks = new ArrayList<>();
  private final FlowPane bar = new FlowPane(8, 8);
  private final FlowPane more = new FlowPane(8, 8);
  private final VBox foot = new VBox(10);
  private final Label error = Keys.prose("", "error");
  private final Fields fields;
  private final Answers answers;
  private Node last;
  private int row;
  private int column;

  Form(BikeDesk desk, String id, String title, Runnable close) {
    super(10);
    this.desk = desk;
    this.close = close;
    this.fields = new Fields(desk);
    this.answers = new Answers(desk);
    setId(id);
    getStyleClass().addAll("card", "form");
    error.setId(id + "-error");
    grid.setHgap(14);
    grid.setVgap(10);
    grid.setPadding(new Insets(0, SCROLL_BAR, 2, 0));
    for (int i = 0; i < 2; i++) {
      ColumnConstraints half = new ColumnConstraints();
      half.setPercentWidth(50);
      grid.getColumnConstraints().add(half);
    }
    heading = Keys.prose(title, "card-title");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    bar.setAlignment(Pos.CENTER_LEFT);
    bar.getChildren()
        .addAll(
            Keys.mainKey(id + "-save", desk.text("save"), this::trySave),
            Keys.key(id + "-cancel", desk.text("cancel"), close));
    foot.getChildren().add(bar);
    getChildren().addAll(heading, scroll, foot);
    setMinHeight(0);
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
  }

  /** Saves what was answered; throws {@link Refused} where it cannot be. */
  abstract void save();

  final BikeDesk desk() {
    return desk;
  }

  final Fields fields() {
    return fields;
  }

  final void close() {
    close.run();
  }

  /** A question in half the width. */
  final <A extends Ask<?>> A ask(A ask) {
    return place(ask, 1);
  }

  /** A question in the whole width. */
  final <A extends Ask<?>> A wide(A ask) {
    return place(ask, 2);
  }

  private <A extends Ask<?>> A place(A ask, int span) {
    boolean beside = column == 1 && span == 1;
    if (beside && last instanceof Ask<?> left) {
      ask.levelWith(left);
    }
    asks.add(ask);
    add(ask, span);
    return ask;
  }

  private void add(Node node, int span) {
    last = node;
    if (column + span > 2) {
      column = 0;
      row++;
    }
    grid.add(node, column, row, span, 1);
    column += span;
  }

  /** Across the form: a heading within it, a caution, a key to something else. */
  final void say(Region words) {
    add(words, 2);
  }

  /** One more key, below the questions, so that those have the room above Save and Cancel. */
  final Button key(String id, String text, Runnable action) {
    Button key = Keys.key(id, text, action);
    if (more.getChildren().isEmpty()) {
      add(more, 2);
    }
    more.getChildren().add(key);
    return key;
  }

  /** Puts a question in the place of fields and keys; null brings them back as they were. */
  final void instead(Node question) {
    refuse("");
    if (question == null) {
      foot.getChildren().setAll(bar);
      getChildren().setAll(heading, scroll, foot);
    } else {
      foot.getChildren().clear();
      VBox.setVgrow(question, Priority.ALWAYS);
      getChildren().setAll(heading, question, foot);
    }
  }

  final boolean touched() {
    return asks.stream().anyMatch(Ask::touched);
  }

  final <T> T take(Ask<T> ask) {
    return answers.take(ask);
  }

  /** What a reading comes to; a fault of it is told below the question to blame. */
  final <T> T blame(Ask<?> ask, Supplier<T> reading) {
    return answers.blame(ask, reading);
  }

  final void trySave() {
    asks.forEach(ask -> ask.refuse(""));
    refuse("");
    try {
      save();
    } catch (Refused refused) {
      refused.ask().refuse(refused.getMessage());
      refused.ask().requestFocus();
    }
  }

  /** What is wrong with the whole of it, above the keys. */
  final void refuse(String sentence) {
    error.setText(sentence);
    foot.getChildren().remove(error);
    if (!sentence.isEmpty()) {
      foot.getChildren().add(0, error);
    }
  }

  private void key(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE) {
      close.run();
      event.consume();
    } else if (event.getCode() == KeyCode.ENTER && event.getTarget() instanceof TextField) {
      trySave();
      event.consume();
    }
  }

  @Override
  public void requestFocus() {
    if (!asks.isEmpty()) {
      asks.get(0).requestFocus();
    }
  }
}
