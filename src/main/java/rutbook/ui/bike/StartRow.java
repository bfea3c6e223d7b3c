package rutbook.ui.bike;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import rutbook.notebook.Fault;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Range;
import rutbook.notebook.Role;
import rutbook.ui.controls.AskText;
import rutbook.units.Amount;
import rutbook.units.Display;

/** A setting that the new bike has or has not: how far it goes, and how it stands now. */
final class StartRow {
  private final BikeDesk desk;
  private final Role role;
  private final CheckBox has;
  private final AskText<Amount> least;
  private final AskText<Amount> most;
  private final AskText<Optional<Amount>> now;

  StartRow(BikeDesk desk, Role role, Display display) {
    this.desk = desk;
    this.role = role;
    CommonPractice usual = CommonPractice.of(role, display);
    Fields fields = new Fields(desk);
    String id = "start-" + role;
    has = new CheckBox(desk.words().name(role));
    has.setId(id);
    has.getStyleClass().add("large-target");
    has.setMaxWidth(Double.MAX_VALUE);
    has.setSelected(true);
    has.setOnAction(event -> show());
    least =
        fields.amountIn(
            id + "-least",
            "start.least",
            usual.range().map(Range::least),
            () -> usual.step().unit());
    most =
        fields.amountIn(
            id + "-most", "start.most", usual.range().map(Range::most), () -> usual.step().unit());
    now = fields.maybeIn(id + "-now", "start.now", Optional.empty(), () -> usual.step().unit());
    for (AskText<?> ask : List.of(least, most, now)) {
      ask.bare();
      ask.field().setPrefColumnCount(5);
      ask.field().setAccessibleText(has.getText() + ", " + ask.field().getAccessibleText());
    }
    show();
  }

  List<Node> nodes() {
    return List.of(has, least, most, now);
  }

  private void show() {
    for (AskText<?> ask : List.of(least, most, now)) {
      ask.setDisable(!has.isSelected());
    }
  }

  /**
   * The line of the first sheet; empty where the bike has no such setting.
   *
   * @throws Refused when what was typed cannot be
   */
  Optional<FirstSheet.Line> read(Answers answers) {
    for (AskText<?> ask : List.of(least, most, now)) {
      ask.refuse("");
    }
    if (!has.isSelected()) {
      return Optional.empty();
    }
    Amount from = answers.take(least);
    Amount to = answers.take(most);
    Range range = answers.blame(most, () -> new Range(from, to));
    String name = desk.words().name(role);
    Optional<Amount> stands = answers.take(now);
    answers.blame(now, () -> stands.map(amount -> inside(name, range, amount)));
    return Optional.of(new FirstSheet.Line(role, name, range, stands));
  }

  /** What is on the bike now lies between its stops, or one of the three was counted wrongly. */
  private static Amount inside(String name, Range stops, Amount amount) {
    if (amount.dimension() != stops.least().dimension()) {
      throw new NotebookException(
          Fault.WRONG_UNIT, name, amount.unit().symbol(), stops.least().unit().symbol());
    }
    if (amount.compareQuantity(stops.least()) < 0) {
      throw new NotebookException(Fault.BELOW_LEAST, name, amount, stops.least());
    }
    if (amount.compareQuantity(stops.most()) > 0) {
      throw new NotebookException(Fault.ABOVE_MOST, name, amount, stops.most());
    }
    return amount;
  }
}
