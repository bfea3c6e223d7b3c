package rutbook.ui.log;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.ChoiceBox;
import javafx.util.StringConverter;

/** A filter with one choice, or none: the first line stands for all. */
final class Choice<T> {
  private final ChoiceBox<Optional<T>> box = new ChoiceBox<>();
  private List<T> offered = List.of();

  Choice(String id, String all, Function<T, String> name, Runnable changed) {
    box.setId(id);
    box.setAccessibleText(all);
    box.getStyleClass().add("large-target");
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(Optional<T> choice) {
            return choice == null ? all : choice.map(name).orElse(all);
          }

          @Override
          public Optional<T> fromString(String text) {
            return Optional.empty();
          }
        });
    box.getItems().add(Optional.empty());
    box.setValue(Optional.empty());
    box.valueProperty().addListener((value, before, now) -> changed.run());
  }

  ChoiceBox<Optional<T>> box() {
    return box;
  }

  Optional<T> chosen() {
    return box.getValue() == null ? Optional.empty() : box.getValue();
  }

  void clear() {
    box.setValue(Optional.empty());
  }

  /** Keeps the choice where it is still offered. */
  void offer(List<T> things) {
    if (things.equals(offered)) {
      return;
    }
    offered = List.copyOf(things);
    Optional<T> before = chosen().filter(offered::contains);
    box.getItems().setAll(List.of(Optional.empty()));
    things.forEach(thing -> box.getItems().add(Optional.of(thing)));
    box.setValue(before);
  }
}
