package rutbook.ui.bike;

import java.time.LocalDate;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.notebook.ForkKind;
import rutbook.ui.controls.AskOne;
import rutbook.ui.controls.AskText;
import rutbook.units.Dimension;
import rutbook.units.Display;
import rutbook.units.Length;

/** The first step: what the bike is called, its fork, and the units to read it in. */
final class StartBike implements StartStep {
  private final VBox box = new VBox(14);
  private final AskText<String> name;
  private final AskText<LocalDate> from;
  private final AskOne<ForkKind> fork;
  private final AskOne<FirstSheet.Legs> legs;
  private final AskOne<Boolean> metric;

  StartBike(BikeDesk desk, Runnable changed) {
    Fields fields = new Fields(desk);
    name = fields.line("start-name", "start.name", "");
    name.example(desk.text("start.name.example"));
    from = fields.day("start-from", "start.from", desk.desk().today());
    from.hint(desk.text("start.from.hint"));
    fork =
        new AskOne<>(
                "start-fork",
                desk.text("start.fork"),
                List.of(ForkKind.values()),
                ForkKind.PRESSURISED_CARTRIDGE,
                kind -> desk.text("fork." + kind.name()))
            .whenChosen(kind -> changed.run());
    legs =
        new AskOne<>(
            "start-legs",
            desk.text("start.legs"),
            List.of(FirstSheet.Legs.values()),
            FirstSheet.Legs.ALIKE,
            each -> desk.text("legs." + each.name()));
    Display display = desk.desk().notebook().display();
    metric =
        new AskOne<>(
                "start-units",
                desk.text("start.units"),
                List.of(true, false),
                display.unit(Dimension.LENGTH) != Length.INCH,
                yes -> desk.text(yes ? "units.metric" : "units.us"))
            .whenChosen(yes -> changed.run());
    GridPane pair = new GridPane();
    pair.setHgap(14);
    pair.addRow(0, name, from);
    GridPane.setHgrow(name, Priority.ALWAYS);
    box.getChildren().addAll(pair, fork, legs);
    if (desk.desk().notebook().bikes().isEmpty()) {
      box.getChildren().add(metric);
    }
  }

  @Override
  public Node node() {
    return box;
  }

  /** A name is needed now; all else has an answer already. */
  @Override
  public void check(Answers answers) {
    name.refuse("");
    from.refuse("");
    LocalDate day = answers.take(from);
    answers.blame(name, () -> FirstSheet.named(name.read(), day));
  }

  String name() {
    return name.read();
  }

  LocalDate from() {
    return from.read();
  }

  ForkKind fork() {
    return fork.read();
  }

  FirstSheet.Legs legs() {
    return legs.read();
  }

  /** What the rider reads amounts in: the notebook's own, unless the other system was chosen. */
  Display display(Display own) {
    boolean now = own.unit(Dimension.LENGTH) != Length.INCH;
    if (metric.read() == now) {
      return own;
    }
    return metric.read() ? Display.METRIC : Display.US;
  }

  void focus() {
    name.requestFocus();
  }
}
