package rutbook.ui.controls;

import java.math.BigDecimal;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.notebook.Datum;
import rutbook.units.Amount;
import rutbook.words.SettingWords;
import rutbook.words.WindowWords;

/**
 * Counts along while an adjuster is turned to its stop or mark: every touch, key or wheel notch is
 * one step, one can be taken back, and the count is handed over when it is done.
 */
public final class CountAlong extends VBox {
  private static final int MOST = 999;

  /** Which way is counted. */
  public enum Way {
    /** In until it stops. */
    CLOSED,
    /** Out until it stops. */
    OPEN,
    /** Back until the mark lines up. */
    MARK,
    /** From where it stands to where it belongs. */
    ALONG;

    /** From where it stands to where its count begins. */
    public static Way of(Datum datum) {
      return switch (datum) {
        case IN_FROM_OPEN -> OPEN;
        case FROM_MARK, ABSOLUTE -> MARK;
        case OUT_FROM_CLOSED -> CLOSED;
      };
    }
  }

  private final SettingWords settingWords;
  private final WindowWords words;
  private final Amount step;
  private final Label number = Keys.label("", "count-number");
  private final HBox keys = new HBox(10);
  private final Button back;
  private final Button done;
  private int count;

  /**
   * @param title what is counted, with the leg where there are two
   * @param step one click, or the part of a turn that is counted
   */
  public CountAlong(
      WindowWords words,
      SettingWords settingWords,
      Way way,
      String title,
      Amount step,
      Consumer<Amount> counted,
      Runnable cancelled) {
    super(10);
    this.words = words;
    this.settingWords = settingWords;
    this.step = step;
    setId("count-along");
    getStyleClass().add("card");
    Button more = Keys.mainKey("count-plus", words.text("count.plus"), () -> add(1));
    back = Keys.key("count-minus", words.text("count.minus"), () -> add(-1));
    done = Keys.key("count-done", "", () -> counted.accept(amount()));
    more.getStyleClass().add("count");
    back.getStyleClass().add("count");
    done.getStyleClass().add("count");
    HBox.setHgrow(more, Priority.ALWAYS);
    more.setMaxWidth(Double.MAX_VALUE);
    number.setId("count-number");
    number.setAccessibleRole(AccessibleRole.TEXT);
    number.setAlignment(Pos.CENTER_RIGHT);
    keys.getChildren().addAll(number, more, back, done);
    keys.setAlignment(Pos.CENTER_LEFT);
    Label what = Keys.prose(words.text("count.title." + way, title), "card-title");
    what.setMinWidth(0);
    what.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(what, Priority.ALWAYS);
    Button stop = Keys.smallKey("count-cancel", words.text("count.cancel"), cancelled);
    stop.setMinWidth(USE_PREF_SIZE);
    HBox head = new HBox(10, what, stop);
    head.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(head, keys, Keys.prose(words.text("count.hint." + way), "soft"));
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    addEventHandler(ScrollEvent.SCROLL, this::wheel);
    show();
  }

  /** For a narrow place: what ends the count stands below what counts. */
  public CountAlong narrow() {
    keys.getChildren().removeAll(back, done);
    HBox below = new HBox(10, back, done);
    HBox.setHgrow(done, Priority.ALWAYS);
    done.setMaxWidth(Double.MAX_VALUE);
    number.setMinWidth(Label.USE_PREF_SIZE);
    getChildren().add(2, below);
    return this;
  }

  /** What was counted so far. */
  public Amount amount() {
    return step.withValue(step.value().multiply(BigDecimal.valueOf(count)));
  }

  private void add(int steps) {
    count = Math.max(0, Math.min(MOST, count + steps));
    show();
  }

  private void show() {
    number.setText(settingWords.number(amount()));
    number.setAccessibleText(settingWords.amount(amount()));
    done.setText(words.text("count.done", settingWords.amount(amount())));
  }

  private void key(KeyEvent event) {
    switch (event.getCode()) {
      case SPACE, PLUS, ADD, UP, RIGHT -> add(1);
      case BACK_SPACE, MINUS, SUBTRACT, DOWN, LEFT -> add(-1);
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void wheel(ScrollEvent event) {
    if (event.getDeltaY() != 0) {
      add(event.getDeltaY() > 0 ? 1 : -1);
      event.consume();
    }
  }
}
