package rutbook.ui.rebuild;

import java.time.LocalDate;
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
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.words.PlanWords;

/** One step of a printed work sheet: its boxes to fill in, its day, and what is wrong with them. */
final class PaperRow extends VBox {
  private final Desk desk;
  private final Step step;
  private final StepAnswer answer;
  private final PaperDay days;
  private final Optional<Entered> before;
  private final Runnable changed;
  private final String name;
  private final String title;
  private final List<TextField> boxes = new ArrayList<>();
  private final ToggleButton tick;
  private final TextField day;
  private final Label error = Keys.prose("", "error");

  /**
   * @param number of the step on the sheet
   * @param changed runs whenever something else stands here
   */
  PaperRow(Desk desk, Plan plan, Step step, int number, Runnable changed) {
    super(2);
    this.desk = desk;
    this.step = step;
    this.changed = changed;
    this.answer = new StepAnswer(desk.words(), desk.phrases(), plan, step);
    this.days = new PaperDay(desk.today(), desk.words());
    this.before = plan.done(step.id()).map(StepDone::entered);
    this.name = step.id().text().replace(':', '-');
    setId("paper-" + name);
    PlanWords words = new PlanWords(desk.phrases());
    title = words.title(step);
    tick = Keys.choice("paper-tick-" + name, desk.text("sheet.tick"), changed);
    tick.setAccessibleText(number + ". " + title);
    tick.setSelected(before.filter(Entered.Ticked.class::isInstance).isPresent());
    day = field("paper-on-" + name, 7, desk.text("sheet.day.from", title));
    day.managedProperty().bind(day.visibleProperty());
    day.setVisible(false);
    HBox answers = new HBox(8);
    answers.setAlignment(Pos.CENTER_RIGHT);
    answers.getChildren().addAll(answers());
    answers.getChildren().add(day);
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
    error.setId("paper-error-" + name);
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    getChildren().addAll(row, error);
  }

  private List<Node> answers() {
    if (step.ask().words()) {
      return List.of(words(), tick);
    }
    if (isTick()) {
      return List.of(tick);
    }
    if (!step.ask().bothLegs()) {
      return box(step.leg(), "");
    }
    List<Node> both = new ArrayList<>();
    for (Side side : Side.values()) {
      both.addAll(box(Optional.of(side), "-" + side));
    }
    return both;
  }

  private TextField words() {
    TextField said = field("paper-box-" + name, 18, desk.text("bench.words"));
    said.setPromptText(desk.text("bench.words"));
    before
        .filter(Entered.Ticked.class::isInstance)
        .map(Entered.Ticked.class::cast)
        .ifPresent(ticked -> said.setText(ticked.note()));
    boxes.add(said);
    return said;
  }

  private List<Node> box(Optional<Side> side, String ending) {
    String leg = side.map(desk.phrases()::name).orElse("");
    TextField box =
        field("paper-box-" + name + ending, 6, leg.isEmpty() ? title : title + ", " + leg);
    box.setPromptText(desk.settingWords().unitName(step.ask().unit().orElseThrow().dimension()));
    before
        .flatMap(Ask::reading)
        .flatMap(reading -> reading.leg(side.orElse(Side.LEFT)).known())
        .ifPresent(amount -> box.setText(desk.settingWords().brief(amount)));
    boxes.add(box);
    return step.ask().bothLegs()
        ? List.of(Keys.label(desk.phrases().sentence(leg), "soft"), box)
        : List.of(box);
  }

  private TextField field(String id, int columns, String said) {
    TextField field = new TextField();
    field.setId(id);
    field.getStyleClass().add("large-target");
    field.setPrefColumnCount(columns);
    field.setAccessibleText(said);
    field
        .textProperty()
        .addListener(
            (text, was, now) -> {
              refuse("");
              changed.run();
            });
    return field;
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

  /** Whether the row asks for a day of its own. */
  void askDay(boolean asked) {
    day.setVisible(asked);
  }

  /**
   * The day of this row: its own, or else that of the row above, which stands there in grey.
   *
   * @param above of the row above, as far as it is known
   */
  Optional<LocalDate> day(Optional<LocalDate> above) {
    day.setPromptText(above.map(LocalDate::toString).orElse(""));
    return day.isVisible() ? days.read(day.getText()).or(() -> above) : above;
  }

  boolean isBlank() {
    return !tick.isSelected() && boxes.stream().allMatch(box -> box.getText().isBlank());
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
    return answerFault()
        .or(
            () ->
                day.isVisible() && !day.getText().isBlank()
                    ? days.fault(day.getText())
                    : Optional.empty());
  }

  private Optional<String> answerFault() {
    if (isBlank()) {
      return Optional.empty();
    }
    if (isTick()) {
      return boxes.stream().flatMap(box -> answer.wordsFault(box.getText()).stream()).findFirst();
    }
    if (boxes.stream().anyMatch(box -> box.getText().isBlank())) {
      return Optional.of(desk.text("sheet.one.leg"));
    }
    return boxes.stream().flatMap(box -> answer.fault(box.getText()).stream()).findFirst();
  }

  /** Says below the row what is wrong; an empty text takes it back. */
  void refuse(String sentence) {
    error.setText(sentence);
    boxes.forEach(box -> mark(box, !sentence.isEmpty() && answerFault().isPresent()));
    mark(day, !sentence.isEmpty() && answerFault().isEmpty());
  }

  private static void mark(TextField field, boolean refused) {
    field.getStyleClass().remove("refused");
    if (refused) {
      field.getStyleClass().add("refused");
    }
  }

  /** What stands here; only where it is neither blank nor wrong. */
  Entered entered() {
    return isTick()
        ? new Entered.Ticked(boxes.isEmpty() ? "" : boxes.get(0).getText().strip())
        : answer
            .entered(boxes.stream().map(TextField::getText).toList(), instrument())
            .orElseThrow();
  }

  /** What it was measured with stays, where that was said before. */
  private Optional<Instrument> instrument() {
    return before
        .filter(Entered.Measured.class::isInstance)
        .map(Entered.Measured.class::cast)
        .flatMap(Entered.Measured::instrument);
  }
}
