package rutbook.ui.rebuild;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import rutbook.notebook.Entered;
import rutbook.notebook.Instrument;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.ui.Desk;
import rutbook.ui.controls.CountAlong;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;

/**
 * What a step wants entered: a field for each leg, filled with what it should be or was, a
 * count-along, what a fill was measured with, or a few words. Limits are checked while it is typed.
 */
final class BenchEntry extends VBox {
  private final Desk desk;
  private final Plan plan;
  private final Step step;
  private final StepAnswer answer;
  private final Optional<Entered> before;
  private final Runnable changed;
  private final List<TextField> fields = new ArrayList<>();
  private final List<Label> errors = new ArrayList<>();
  private final List<String> legs = new ArrayList<>();
  private final VBox counting = new VBox();
  private final MeasuredWith with;

  /**
   * @param changed runs whenever what would be entered is another
   */
  BenchEntry(Desk desk, Plan plan, Step step, Runnable changed) {
    super(10);
    this.desk = desk;
    this.plan = plan;
    this.step = step;
    this.answer = new StepAnswer(desk.words(), desk.phrases(), plan, step);
    this.before = plan.done(step.id()).map(StepDone::entered);
    this.changed = changed;
    this.with = new MeasuredWith(desk, instrumentBefore(), changed);
    setId("bench-entry");
    if (step.ask().words()) {
      getChildren().add(words());
    }
    if (isTicked()) {
      return;
    }
    Optional<Reading> first = first();
    if (step.ask().bothLegs()) {
      getChildren().add(field(Optional.of(Side.LEFT), first));
      getChildren().add(field(Optional.of(Side.RIGHT), first));
    } else {
      getChildren().add(field(step.leg(), first));
    }
    counting.managedProperty().bind(Bindings.isNotEmpty(counting.getChildren()));
    getChildren().addAll(with.choosing(), counting);
    countFirst();
  }

  private Optional<Instrument> instrumentBefore() {
    return before
        .filter(Entered.Measured.class::isInstance)
        .map(Entered.Measured.class::cast)
        .flatMap(Entered.Measured::instrument);
  }

  /** Where clicks are counted, the count is open at once at the first leg that has none. */
  private void countFirst() {
    boolean counts =
        step.kind() == StepKind.COUNT
            || step.kind() == StepKind.TOTAL
            || step.kind() == StepKind.SHOP_FOUND && step.ask().form() == Ask.Form.COUNT;
    for (int i = 0; counts && i < fields.size(); i++) {
      if (fields.get(i).getText().isBlank()) {
        count(i, legs.get(i));
        return;
      }
    }
  }

  /** What was entered before, what was measured leg by leg, or where it should stand. */
  private Optional<Reading> first() {
    Optional<Reading> entered = before.flatMap(Ask::reading);
    if (entered.isPresent()) {
      return entered;
    }
    boolean proof =
        step.kind() == StepKind.RACE_SAG
            || step.kind() == StepKind.FREE_SAG
            || step.kind() == StepKind.TOTAL;
    return proof
        ? Optional.empty()
        : plan.prefilled(step).or(() -> step.target().map(target -> target.reading()));
  }

  private Node words() {
    TextField said = new TextField();
    said.setId("bench-words");
    said.getStyleClass().add("large-target");
    said.setPromptText(desk.text("bench.words"));
    said.setAccessibleText(desk.text("bench.words"));
    before
        .filter(Entered.Ticked.class::isInstance)
        .map(Entered.Ticked.class::cast)
        .ifPresent(ticked -> said.setText(ticked.note()));
    return new VBox(2, Keys.prose(desk.text("bench.words"), "bench-line"), checked(said, ""));
  }

  private Node field(Optional<Side> side, Optional<Reading> first) {
    TextField field = new TextField();
    field.setId("bench-field" + side.map(leg -> "-" + leg).orElse(""));
    field.getStyleClass().add("bench-field");
    field.setPrefColumnCount(6);
    field.setMinWidth(0);
    String leg = side.map(each -> desk.phrases().sentence(desk.phrases().name(each))).orElse("");
    field.setAccessibleText(leg.isEmpty() ? desk.text("bench.value") : leg);
    first
        .flatMap(reading -> reading.leg(side.orElse(Side.LEFT)).known())
        .ifPresent(amount -> field.setText(desk.settingWords().brief(amount)));
    HBox row = new HBox(10);
    row.setAlignment(Pos.CENTER_LEFT);
    if (!leg.isEmpty()) {
      Label name = Keys.label(desk.phrases().sentence(leg), "card-title");
      name.setMinWidth(64);
      row.getChildren().add(name);
    }
    int place = fields.size();
    VBox checked = checked(field, leg);
    checked.getChildren().set(0, row);
    row.getChildren().add(field);
    if (step.ask().instrument() && place == 0) {
      row.getChildren().add(with.key());
    }
    if (step.ask().form() == Ask.Form.MEASURE && !step.ask().instrument()) {
      String unit = desk.settingWords().unitName(step.ask().unit().orElseThrow().dimension());
      Label read = Keys.label(unit, "bench-line", "soft");
      read.visibleProperty().bind(field.textProperty().isEmpty());
      row.getChildren().add(read);
    }
    if (step.ask().form() == Ask.Form.COUNT) {
      row.getChildren()
          .add(
              Keys.key(
                  "bench-count" + side.map(each -> "-" + each).orElse(""),
                  desk.text("bench.count"),
                  () -> count(place, leg)));
    }
    return checked;
  }

  /** A field with the place below it where it is said what is wrong. */
  private VBox checked(TextField field, String leg) {
    Label error = Keys.prose("", "error");
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    field
        .textProperty()
        .addListener(
            (text, was, now) -> {
              check();
              changed.run();
            });
    fields.add(field);
    legs.add(leg);
    errors.add(error);
    return new VBox(2, field, error);
  }

  private void count(int place, String leg) {
    String title = step.setting().map(Setting::name).orElse("") + (leg.isEmpty() ? "" : ", " + leg);
    Amount one =
        step.setting()
            .map(setting -> setting.scale().step())
            .orElseGet(() -> Amount.of(1, step.ask().unit().orElseThrow()));
    CountAlong along =
        new CountAlong(
            desk.words(),
            desk.settingWords(),
            way(),
            title,
            one,
            counted -> {
              fields.get(place).setText(desk.settingWords().brief(counted));
              counting.getChildren().clear();
              next(place);
            },
            () -> counting.getChildren().clear());
    counting.getChildren().setAll(along.narrow());
    rutbook.ui.fx.Background.afterwards(() -> along.lookup("#count-plus").requestFocus());
  }

  /** A step that places something goes out from its stop; every other one goes there. */
  private CountAlong.Way way() {
    return step.kind().places()
        ? CountAlong.Way.ALONG
        : step.setting()
            .map(setting -> CountAlong.Way.of(setting.scale().datum()))
            .orElse(CountAlong.Way.CLOSED);
  }

  /** After one leg is counted the hand goes to the other, then on. */
  private void next(int place) {
    if (place + 1 < fields.size() && fields.get(place + 1).getText().isBlank()) {
      count(place + 1, legs.get(place + 1));
    } else {
      changed.run();
    }
  }

  private void check() {
    for (int i = 0; i < fields.size(); i++) {
      String typed = fields.get(i).getText();
      errors.get(i).setText(typed.isBlank() ? "" : fault(typed).orElse(""));
      fields.get(i).getStyleClass().remove("refused");
      if (!errors.get(i).getText().isEmpty()) {
        fields.get(i).getStyleClass().add("refused");
      }
    }
  }

  private Optional<String> fault(String typed) {
    return isTicked() ? answer.wordsFault(typed) : answer.fault(typed);
  }

  /** What would be entered now; empty while something is missing or refused. */
  Optional<Entered> entered() {
    if (!isTicked()) {
      return answer.entered(fields.stream().map(TextField::getText).toList(), with.chosen());
    }
    String said = fields.isEmpty() ? "" : fields.get(0).getText().strip();
    return answer.wordsFault(said).isPresent()
        ? Optional.empty()
        : Optional.of(new Entered.Ticked(said));
  }

  /** The field to begin with, if anything is typed here. */
  Optional<Node> firstField() {
    return fields.stream().map(Node.class::cast).findFirst();
  }

  /** Whether the count-along stands open and takes the keys. */
  boolean isCounting() {
    return !counting.getChildren().isEmpty();
  }

  boolean isTicked() {
    return step.ask().form() == Ask.Form.TICK;
  }
}
