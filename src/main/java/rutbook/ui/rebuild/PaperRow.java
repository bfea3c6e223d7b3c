package rutbook.ui.rebuild;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.notebook.Entered;
import rutbook.notebook.Instrument;
import rutbook.notebook.Reading;
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.notebook.Value;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.words.PlanWords;

/** One step of a printed work sheet: its boxes to fill in, and what is wrong with them. */
final class PaperRow extends VBox {
  private final Desk desk;
  private final Step step;
  private final StepBounds bounds;
  private final Optional<Entered> before;
  private final List<TextField> boxes = new ArrayList<>();
  private final ToggleButton tick;
  private final Label error = Keys.prose("", "error");

  /**
   * @param number of the step on the sheet
   * @param changed runs whenever something else stands here
   */
  PaperRow(Desk desk, Plan plan, Step step, int number, Runnable changed) {
    super(2);
    this.desk = desk;
    this.step = step;
    this.bounds = new StepBounds(desk, plan, step);
    this.before = plan.done(step.id()).map(StepDone::entered);
    String id = step.id().text().replace(':', '-');
    setId("paper-" + id);
    PlanWords words = new PlanWords(desk.phrases());
    String title = words.title(step);
    tick = Keys.choice("paper-tick-" + id, desk.text("sheet.tick"), changed);
    tick.setAccessibleText(number + ". " + title);
    tick.setSelected(before.filter(Entered.Ticked.class::isInstance).isPresent());
    HBox answers = new HBox(8);
    answers.setAlignment(Pos.CENTER_RIGHT);
    if (step.ask().form() == Ask.Form.TICK) {
      answers.getChildren().add(tick);
    } else if (step.ask().bothLegs()) {
      for (Side side : Side.values()) {
        answers.getChildren().addAll(box(id + "-" + side, title, Optional.of(side), changed));
      }
    } else {
      answers.getChildren().addAll(box(id, title, step.leg(), changed));
    }
    answers.setMinWidth(HBox.USE_PREF_SIZE);
    VBox what = new VBox(1, Keys.prose(number + ". " + title));
    List<String> values = words.values(step);
    if (!values.isEmpty()) {
      what.getChildren().add(Keys.prose(String.join(" · ", values), "soft", "condensed"));
    }
    what.setMinWidth(0);
    what.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(what, Priority.ALWAYS);
    HBox row = new HBox(12, what, answers);
    row.setAlignment(Pos.CENTER_LEFT);
    error.setId("paper-error-" + id);
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    getChildren().addAll(row, error);
  }

  private List<Node> box(String id, String title, Optional<Side> side, Runnable changed) {
    TextField box = new TextField();
    box.setId("paper-box-" + id);
    box.getStyleClass().add("large-target");
    box.setPrefColumnCount(6);
    box.setPromptText(
        desk.settingWords().unit(step.ask().unit().orElseThrow().dimension()).symbol());
    String leg = side.map(desk.phrases()::name).orElse("");
    box.setAccessibleText(leg.isEmpty() ? title : title + ", " + leg);
    before
        .flatMap(Ask::reading)
        .flatMap(reading -> reading.leg(side.orElse(Side.LEFT)).known())
        .ifPresent(amount -> box.setText(desk.settingWords().brief(amount)));
    box.textProperty()
        .addListener(
            (text, was, now) -> {
              refuse("");
              changed.run();
            });
    boxes.add(box);
    return step.ask().bothLegs() ? List.of(Keys.label(leg, "soft"), box) : List.of(box);
  }

  Step step() {
    return step;
  }

  boolean isTick() {
    return step.ask().form() == Ask.Form.TICK;
  }

  void tick() {
    tick.setSelected(true);
  }

  boolean isBlank() {
    return isTick() ? !tick.isSelected() : boxes.stream().allMatch(box -> box.getText().isBlank());
  }

  /** Whether something else stands here than was entered before. */
  boolean isNew() {
    return !isBlank() && fault().isEmpty() && !before.equals(Optional.of(entered()));
  }

  /** Whether nothing was entered at this step, here or before. */
  boolean isOpen() {
    return isBlank() && before.isEmpty();
  }

  /** What is wrong with what stands here; empty when it is blank or right. */
  Optional<String> fault() {
    if (isBlank() || isTick()) {
      return Optional.empty();
    }
    if (boxes.stream().anyMatch(box -> box.getText().isBlank())) {
      return Optional.of(desk.text("sheet.one.leg"));
    }
    return boxes.stream().flatMap(box -> bounds.fault(box.getText()).stream()).findFirst();
  }

  /** Says below the row what is wrong; an empty text takes it back. */
  void refuse(String sentence) {
    error.setText(sentence);
    for (TextField box : boxes) {
      box.getStyleClass().remove("refused");
      if (!sentence.isEmpty()) {
        box.getStyleClass().add("refused");
      }
    }
  }

  /** What stands here; only where it is neither blank nor wrong. */
  Entered entered() {
    if (isTick()) {
      return new Entered.Ticked();
    }
    List<Amount> amounts = boxes.stream().map(box -> bounds.amount(box.getText())).toList();
    Reading reading =
        step.ask().bothLegs()
            ? new Reading.Pair(Value.of(amounts.get(0)), Value.of(amounts.get(1)))
            : Reading.of(amounts.get(0));
    return step.ask().form() == Ask.Form.COUNT
        ? new Entered.Counted(reading)
        : new Entered.Measured(reading, instrument());
  }

  /** What it was measured with stays, where that was said before. */
  private Optional<Instrument> instrument() {
    return before
        .filter(Entered.Measured.class::isInstance)
        .map(Entered.Measured.class::cast)
        .flatMap(Entered.Measured::instrument);
  }
}
