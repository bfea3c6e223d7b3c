package rutbook.ui.rebuild;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import rutbook.notebook.Entered;
import rutbook.notebook.Instrument;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;
import rutbook.notebook.Value;
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
 * count-along, and what a fill was measured with. Limits are checked while it is typed.
 */
final class BenchEntry extends VBox {
  private final Desk desk;
  private final Plan plan;
  private final Step step;
  private final StepBounds bounds;
  private final Runnable changed;
  private final List<TextField> fields = new ArrayList<>();
  private final List<Label> errors = new ArrayList<>();
  private final List<String> legs = new ArrayList<>();
  private final VBox counting = new VBox();
  private final VBox choosing = new VBox();
  private Optional<Instrument> instrument = Optional.empty();

  /**
   * @param changed runs whenever what would be entered is another
   */
  BenchEntry(Desk desk, Plan plan, Step step, Runnable changed) {
    super(10);
    this.desk = desk;
    this.plan = plan;
    this.step = step;
    this.bounds = new StepBounds(desk, plan, step);
    this.changed = changed;
    setId("bench-entry");
    if (step.ask().form() == Ask.Form.TICK) {
      return;
    }
    Optional<Reading> first = first();
    if (step.ask().bothLegs()) {
      getChildren().add(field(Optional.of(Side.LEFT), first));
      getChildren().add(field(Optional.of(Side.RIGHT), first));
    } else {
      getChildren().add(field(step.leg(), first));
    }
    choosing.managedProperty().bind(Bindings.isNotEmpty(choosing.getChildren()));
    counting.managedProperty().bind(Bindings.isNotEmpty(counting.getChildren()));
    getChildren().addAll(choosing, counting);
    countFirst();
  }

  /** Where clicks are counted, the count is open at once at the first leg that has none. */
  private void countFirst() {
    boolean counts = step.kind() == StepKind.COUNT || step.kind() == StepKind.TOTAL;
    for (int i = 0; counts && i < fields.size(); i++) {
      if (fields.get(i).getText().isBlank()) {
        count(i, legs.get(i));
        return;
      }
    }
  }

  /** What was entered before, what was measured leg by leg, or where it should stand. */
  private Optional<Reading> first() {
    Optional<Reading> before = plan.done(step.id()).flatMap(done -> Ask.reading(done.entered()));
    if (before.isPresent()) {
      plan.done(step.id())
          .map(done -> done.entered())
          .filter(Entered.Measured.class::isInstance)
          .map(Entered.Measured.class::cast)
          .ifPresent(measured -> instrument = measured.instrument());
      return before;
    }
    boolean proof = step.kind() == StepKind.RACE_SAG || step.kind() == StepKind.FREE_SAG;
    return proof
        ? Optional.empty()
        : plan.prefilled(step)
            .or(
                () ->
                    step.kind() == StepKind.TOTAL
                        ? Optional.empty()
                        : step.target().map(target -> target.reading()));
  }

  private Node field(Optional<Side> side, Optional<Reading> first) {
    TextField field = new TextField();
    field.setId("bench-field" + side.map(leg -> "-" + leg).orElse(""));
    field.getStyleClass().add("bench-field");
    field.setPrefColumnCount(6);
    field.setMinWidth(0);
    String leg = side.map(each -> desk.phrases().name(each)).orElse("");
    field.setAccessibleText(leg.isEmpty() ? desk.text("bench.value") : leg);
    first
        .flatMap(reading -> reading.leg(side.orElse(Side.LEFT)).known())
        .ifPresent(amount -> field.setText(desk.settingWords().brief(amount)));
    Label error = Keys.prose("", "error");
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    field
        .textProperty()
        .addListener(
            (text, before, now) -> {
              check();
              changed.run();
            });
    fields.add(field);
    legs.add(leg);
    errors.add(error);
    HBox row = new HBox(10);
    row.setAlignment(Pos.CENTER_LEFT);
    if (!leg.isEmpty()) {
      Label name = Keys.label(leg, "card-title");
      name.setMinWidth(64);
      row.getChildren().add(name);
    }
    row.getChildren().add(field);
    int place = fields.size() - 1;
    if (step.ask().instrument() && place == 0) {
      row.getChildren().add(instrumentKey());
    }
    if (step.ask().form() == Ask.Form.COUNT) {
      row.getChildren()
          .add(
              Keys.key(
                  "bench-count" + side.map(each -> "-" + each).orElse(""),
                  desk.text("bench.count"),
                  () -> count(place, leg)));
    }
    return new VBox(2, row, error);
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

  /** After one leg is counted the hand goes to the other, then on. */
  private void next(int place) {
    if (place + 1 < fields.size() && fields.get(place + 1).getText().isBlank()) {
      count(place + 1, legs.get(place + 1));
    } else {
      changed.run();
    }
  }

  /** The key that says what it was measured with; a touch shows what there is to choose from. */
  private Button instrumentKey() {
    Button with = Keys.key("bench-with", "", () -> {});
    FlowPane choices = new FlowPane(8, 8);
    for (Instrument each : Instrument.values()) {
      ToggleButton key = Keys.choice("bench-with-" + each, desk.phrases().name(each), () -> {});
      key.setOnAction(
          event -> {
            instrument = key.isSelected() ? Optional.of(each) : Optional.empty();
            choosing.getChildren().clear();
            name(with);
            with.requestFocus();
            changed.run();
          });
      choices.getChildren().add(key);
    }
    with.setOnAction(
        event -> {
          boolean open = !choosing.getChildren().isEmpty();
          for (int i = 0; i < Instrument.values().length; i++) {
            ((ToggleButton) choices.getChildren().get(i))
                .setSelected(instrument.equals(Optional.of(Instrument.values()[i])));
          }
          choosing.getChildren().setAll(open ? List.of() : List.of(choices));
        });
    name(with);
    return with;
  }

  private void name(Button with) {
    with.setText(
        instrument
            .map(each -> desk.text("bench.measured.by", desk.phrases().name(each)))
            .orElseGet(() -> desk.text("bench.measured.with")));
  }

  private void check() {
    for (int i = 0; i < fields.size(); i++) {
      errors.get(i).setText(fields.get(i).getText().isBlank() ? "" : fault(i).orElse(""));
      fields.get(i).getStyleClass().remove("refused");
      if (!errors.get(i).getText().isEmpty()) {
        fields.get(i).getStyleClass().add("refused");
      }
    }
  }

  private Optional<String> fault(int place) {
    return bounds.fault(fields.get(place).getText());
  }

  private Amount amount(int place) {
    return bounds.amount(fields.get(place).getText());
  }

  /** What would be entered now; empty while something is missing or refused. */
  Optional<Entered> entered() {
    if (step.ask().form() == Ask.Form.TICK) {
      return Optional.of(new Entered.Ticked());
    }
    for (int i = 0; i < fields.size(); i++) {
      if (fields.get(i).getText().isBlank() || fault(i).isPresent()) {
        return Optional.empty();
      }
    }
    Reading reading =
        step.ask().bothLegs()
            ? new Reading.Pair(Value.of(amount(0)), Value.of(amount(1)))
            : Reading.of(amount(0));
    return Optional.of(
        step.ask().form() == Ask.Form.COUNT
            ? new Entered.Counted(reading)
            : new Entered.Measured(reading, instrument));
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
