package rutbook.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import rutbook.drawing.Ruler;
import rutbook.notebook.Bounds;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.words.SettingWords;
import rutbook.words.WindowWords;

/**
 * A ruler to set one amount on: dragged, stepped with keys, or typed with any unit of its kind.
 * Nothing outside the limits comes out of it; what was typed and refused stays for mending.
 */
public final class RulerControl extends VBox {
  private static final int MANY_STEPS = 5;

  private final WindowWords words;
  private final SettingWords settingWords;
  private final RulerView view;
  private final TextField field = new TextField();
  private final Label error = Keys.label("", "error");
  private final Label hover = Keys.label("", "ruler-hover");
  private final Consumer<Amount> chosen;
  private final Runnable stepClosed;
  private Sheet sheet;
  private Setting setting;
  private String shownText = "";

  /**
   * @param chosen gets every amount inside the limits as it is dragged, stepped to or typed
   * @param stepClosed runs when a drag ends, so that the next one is a step of undo of its own
   */
  public RulerControl(
      String id,
      WindowWords words,
      SettingWords settingWords,
      Consumer<Amount> chosen,
      Runnable stepClosed) {
    this.words = words;
    this.settingWords = settingWords;
    this.view = new RulerView(settingWords.numerals(), 1.25);
    this.chosen = chosen;
    this.stepClosed = stepClosed;
    setId(id);
    view.setId(id + "-ruler");
    field.setId(id + "-field");
    error.setId(id + "-error");
    setFillWidth(true);
    buildRuler();
    buildField();
    StackPane held = new StackPane(view, hover);
    HBox row = new HBox(12, held, field);
    row.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(held, Priority.ALWAYS);
    getChildren().add(row);
  }

  /** Shows the setting with its ruler; half-typed text is left alone while it is being typed. */
  public void show(Sheet newSheet, Setting newSetting, Ruler ruler, List<String> marks) {
    sheet = newSheet;
    setting = newSetting;
    view.show(ruler.in(settingWords.display()));
    Reading reading =
        ruler
            .reading()
            .map(Reading::of)
            .orElse(
                Reading.unknown(
                    rutbook.notebook.Carrier.SINGLE, rutbook.notebook.WhyUnknown.NOT_NOTED));
    view.setAccessibleText(
        RulerSentence.of(words, settingWords, sheet, setting, reading, new ArrayList<>(marks)));
    field.setAccessibleText(words.text("ruler.type", setting.name()));
    String text = ruler.reading().map(settingWords::brief).orElse("");
    if (!text.equals(shownText) || !field.isFocused() && !hasError()) {
      shownText = text;
      field.setText(text);
      refuse("");
    }
  }

  public RulerView view() {
    return view;
  }

  public TextField field() {
    return field;
  }

  private void buildField() {
    field.setPrefColumnCount(7);
    field.setMinWidth(TextField.USE_PREF_SIZE);
    field.setOnAction(event -> take());
    field
        .focusedProperty()
        .addListener(
            (focused, before, now) -> {
              if (!now) {
                take();
              }
            });
  }

  private boolean hasError() {
    return getChildren().contains(error);
  }

  private void buildRuler() {
    view.getStyleClass().add("ruler-control");
    view.setFocusTraversable(true);
    view.setAccessibleRole(AccessibleRole.SLIDER);
    view.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    view.addEventHandler(
        MouseEvent.MOUSE_PRESSED,
        event -> {
          view.requestFocus();
          choose(view.scaleNow().at(event.getX()));
        });
    view.addEventHandler(
        MouseEvent.MOUSE_DRAGGED, event -> choose(view.scaleNow().at(event.getX())));
    view.addEventHandler(MouseEvent.MOUSE_RELEASED, event -> stepClosed.run());
    view.addEventHandler(MouseEvent.MOUSE_MOVED, this::hover);
    view.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::hover);
    view.addEventHandler(MouseEvent.MOUSE_EXITED, event -> hover.setVisible(false));
    hover.setManaged(false);
    hover.setMouseTransparent(true);
    hover.setVisible(false);
  }

  /** What a touch here would choose, beside the pointer. */
  private void hover(MouseEvent event) {
    if (view.ruler() == null) {
      return;
    }
    hover.setText(settingWords.amount(view.scaleNow().at(event.getX())));
    hover.setVisible(true);
    hover.autosize();
    double left = event.getX() - hover.getWidth() / 2;
    hover.relocate(
        Math.max(0, Math.min(left, view.getWidth() - hover.getWidth())), -hover.getHeight());
  }

  private void key(KeyEvent event) {
    KeyCode code = event.getCode();
    if (view.ruler() == null) {
      return;
    }
    Optional<Amount> next =
        switch (code) {
          case RIGHT, UP -> Optional.of(stepped(1));
          case LEFT, DOWN -> Optional.of(stepped(-1));
          case PAGE_UP -> Optional.of(stepped(MANY_STEPS));
          case PAGE_DOWN -> Optional.of(stepped(-MANY_STEPS));
          case HOME -> Optional.of(view.ruler().limits().least());
          case END -> Optional.of(view.ruler().limits().most());
          default -> Optional.empty();
        };
    next.ifPresent(
        amount -> {
          choose(amount);
          event.consume();
        });
  }

  private Amount stepped(int steps) {
    Ruler ruler = view.ruler();
    return view.scaleNow().stepped(ruler.reading().orElse(ruler.limits().least()), steps);
  }

  private void choose(Amount amount) {
    boolean same =
        view.ruler().reading().map(reading -> reading.sameQuantity(amount)).orElse(false);
    if (!same) {
      chosen.accept(amount);
    }
  }

  /** Takes what was typed, or says under the field why not and keeps it. */
  private void take() {
    if (setting == null || field.getText().equals(shownText)) {
      refuse("");
      return;
    }
    try {
      Amount amount =
          AmountText.parse(field.getText(), settingWords.unit(setting.dimension()), words.locale());
      Optional<NotebookException> refused = Bounds.refusal(sheet, setting, amount);
      if (refused.isPresent()) {
        refuse(settingWords.refusal(refused.get()));
        return;
      }
      refuse("");
      shownText = settingWords.brief(amount);
      choose(amount);
      stepClosed.run();
      field.setText(shownText);
    } catch (AmountException fault) {
      refuse(words.fault(fault));
    }
  }

  private void refuse(String sentence) {
    error.setText(sentence);
    getChildren().remove(error);
    field.getStyleClass().remove("refused");
    if (!sentence.isEmpty()) {
      field.getStyleClass().add("refused");
      getChildren().add(error);
    }
  }
}
