package rutbook.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.collections.FXCollections;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.util.StringConverter;

/** Asks for one of a few things: keys side by side, or a list where there are many. */
public final class AskOne<T> extends Ask<T> {
  private static final int MOST_KEYS = 4;

  private final T before;
  private final List<ToggleButton> keys = new ArrayList<>();
  private final List<T> things;
  private ComboBox<T> list;
  private Consumer<T> chosen = thing -> {};
  private T now;

  public AskOne(
      String id, String label, List<T> things, T before, Function<? super T, String> name) {
    super(id, label);
    this.before = before;
    this.now = before;
    this.things = List.copyOf(things);
    if (things.size() <= MOST_KEYS) {
      keys(id, label, name);
    } else {
      list(id, name);
    }
  }

  private void keys(String id, String label, Function<? super T, String> name) {
    FlowPane row = new FlowPane(6, 6);
    for (int i = 0; i < things.size(); i++) {
      T thing = things.get(i);
      ToggleButton key = Keys.choice(id + "-" + i, name.apply(thing), () -> choose(thing));
      key.setAccessibleText(label + ": " + key.getText());
      keys.add(key);
      row.getChildren().add(key);
    }
    answeredBy(row, id);
    show();
  }

  private void list(String id, Function<? super T, String> name) {
    list = new ComboBox<>(FXCollections.observableArrayList(things));
    list.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(T thing) {
            return thing == null ? "" : name.apply(thing);
          }

          @Override
          public T fromString(String text) {
            throw new UnsupportedOperationException(text);
          }
        });
    list.setVisibleRowCount(12);
    list.setValue(before);
    list.setMaxWidth(Double.MAX_VALUE);
    list.getStyleClass().add("large-target");
    list.valueProperty().addListener((value, old, next) -> choose(next));
    answeredBy(list, id);
  }

  /** Tells of every choice from now on. */
  public AskOne<T> whenChosen(Consumer<T> listener) {
    chosen = listener;
    return this;
  }

  /** Chooses as a touch would. */
  public void choose(T thing) {
    boolean same = Objects.equals(now, thing);
    now = thing;
    show();
    if (!same) {
      chosen.accept(thing);
    }
  }

  private void show() {
    for (int i = 0; i < keys.size(); i++) {
      keys.get(i).setSelected(things.get(i).equals(now));
    }
    if (list != null && !Objects.equals(list.getValue(), now)) {
      list.setValue(now);
    }
  }

  @Override
  public T read() {
    return now;
  }

  @Override
  public boolean touched() {
    return !Objects.equals(before, now);
  }

  @Override
  public void requestFocus() {
    if (list != null) {
      list.requestFocus();
    } else {
      keys.get(Math.max(0, things.indexOf(now))).requestFocus();
    }
  }
}
