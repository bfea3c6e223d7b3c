package rutbook.ui.controls;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** A question of a form: its label, the control it is answered with, and what is wrong with it. */
public abstract class Ask<T> extends VBox {
  private final Label label;
  private final Label error = Keys.prose("", "error");
  private Node control;

  protected Ask(String id, String text) {
    super(3);
    label = Keys.prose(text, "group-title");
    error.setId(id + "-error");
    getChildren().add(label);
    setFillWidth(true);
  }

  /** The control, once it is made; a hint below it says what is common practice. */
  protected final void answeredBy(Node answer, String id) {
    control = answer;
    answer.setId(id);
    answer.setAccessibleText(label.getText());
    label.setLabelFor(answer);
    getChildren().add(answer);
  }

  /** Stands beside another: both controls on one line, however many lines the labels take. */
  public final void levelWith(Ask<?> other) {
    for (Label each : List.of(label, other.label)) {
      each.setAlignment(Pos.BOTTOM_LEFT);
      each.widthProperty()
          .addListener(
              (width, before, now) -> {
                double taller = Math.max(lines(label), lines(other.label));
                label.setMinHeight(taller);
                other.label.setMinHeight(taller);
              });
    }
  }

  private static double lines(Label label) {
    return label.prefHeight(label.getWidth());
  }

  /** Without the label on top, where a heading says the same; it stays for the screen reader. */
  public final Ask<T> bare() {
    getChildren().remove(label);
    return this;
  }

  /** A line of small type below the control. */
  public final Ask<T> hint(String text) {
    getChildren().add(Keys.prose(text, "soft", "condensed"));
    return this;
  }

  /**
   * What was answered.
   *
   * @throws rutbook.units.AmountException when what was typed is no amount
   * @throws rutbook.notebook.NotebookException when it cannot be in a notebook
   */
  public abstract T read();

  /** Whether something else stands here than when the question was put. */
  public abstract boolean touched();

  /** Says below the control what is wrong; nothing typed is lost. An empty text takes it back. */
  public void refuse(String sentence) {
    error.setText(sentence);
    getChildren().remove(error);
    control.getStyleClass().remove("refused");
    if (!sentence.isEmpty()) {
      control.getStyleClass().add("refused");
      getChildren().add(getChildren().indexOf(control) + 1, error);
    }
  }

  public final String refusal() {
    return getChildren().contains(error) ? error.getText() : "";
  }

  @Override
  public void requestFocus() {
    control.requestFocus();
  }
}
