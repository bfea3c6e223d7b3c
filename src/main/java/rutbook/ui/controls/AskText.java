package rutbook.ui.controls;

import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.TextField;

/** Asks for something typed, which is read in its own way: a name, an amount, a day. */
public final class AskText<T> extends Ask<T> {
  private final TextField field = new TextField();
  private final String before;
  private final Function<String, T> reading;

  /**
   * @param before what stands there to begin with
   * @param reading throws what {@link Ask#read} may throw
   */
  public AskText(String id, String label, String before, Function<String, T> reading) {
    super(id, label);
    this.before = before;
    this.reading = reading;
    field.setText(before);
    field.getStyleClass().add("large-target");
    field.setPrefColumnCount(8);
    answeredBy(field, id);
  }

  /** What is known so far may be nothing; then nothing is read. */
  public static <T> AskText<Optional<T>> optional(
      String id, String label, String before, Function<String, T> reading) {
    return new AskText<>(
        id,
        label,
        before,
        text -> text.isBlank() ? Optional.empty() : Optional.of(reading.apply(text)));
  }

  @Override
  public T read() {
    return reading.apply(field.getText().strip());
  }

  @Override
  public boolean touched() {
    return !field.getText().equals(before);
  }

  public TextField field() {
    return field;
  }

  /** A grey example in the empty field. */
  public AskText<T> example(String text) {
    field.setPromptText(text);
    return this;
  }
}
