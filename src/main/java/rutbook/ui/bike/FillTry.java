package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import rutbook.figures.Figure;
import rutbook.figures.FillKind;
import rutbook.figures.FillRoom;
import rutbook.figures.ForkFigures;
import rutbook.figures.Riding;
import rutbook.notebook.Bounds;
import rutbook.notebook.Carrier;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.physics.ForkChange;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.Dimension;
import rutbook.words.ForkWords;

/** Another fill, or pressure of an air fork, tried on paper: what it would do to the curve. */
final class FillTry extends VBox {
  private final BikeDesk desk;
  private final AskText<Optional<Amount>> fill;
  private final VBox said = new VBox(3);
  private BikeModel model;
  private Riding riding;

  FillTry(BikeDesk desk) {
    super(8);
    this.desk = desk;
    fill =
        new Fields(desk)
            .maybeIn(
                "fill-try", "fill.try", Optional.empty(), () -> varied().scale().step().unit());
    fill.field().textProperty().addListener((text, before, now) -> reckon());
    said.setId("fill-try-said");
    getChildren().setAll(fill, said);
  }

  private Setting varied() {
    Sheet sheet = model.sheet();
    return sheet.settings(FillKind.varied(sheet)).get(0);
  }

  void show(BikeModel newModel, Riding newRiding) {
    model = newModel;
    riding = newRiding;
    Sheet sheet = model.sheet();
    boolean may =
        sheet.settings(FillKind.varied(sheet)).stream()
            .anyMatch(each -> each.dimension() != Dimension.CLICKS);
    setVisible(may);
    setManaged(may);
    if (may) {
      fill.field().setPromptText(desk.words().limits(sheet.limits(varied())));
      reckon();
    }
  }

  /** Refused beyond the sheet's limits, as everywhere. */
  private void reckon() {
    fill.refuse("");
    said.getChildren().clear();
    try {
      Optional<Amount> typed = fill.read();
      if (typed.isEmpty()) {
        return;
      }
      Optional<NotebookException> refused = Bounds.refusal(model.sheet(), varied(), typed.get());
      if (refused.isPresent()) {
        fill.refuse(desk.words().fault(refused.get()));
      } else {
        said.getChildren().setAll(lines(typed.get()));
      }
    } catch (AmountException halfTyped) {
      fill.refuse(desk.words().fault(halfTyped));
    }
  }

  private List<Node> lines(Amount amount) {
    Sheet sheet = model.sheet();
    Setup then = model.now();
    for (Setting each : sheet.settings(FillKind.varied(sheet))) {
      Reading reading =
          each.carrier() == Carrier.PAIR ? Reading.bothLegs(amount) : Reading.of(amount);
      then = then.with(Placed.found(each.id(), reading));
    }
    Figure<ForkChange> change = ForkFigures.change(sheet, model.now(), then, riding);
    ForkWords words = new ForkWords(desk.desk().phrases());
    List<Node> lines = new ArrayList<>();
    change
        .found()
        .ifPresent(found -> words.change(found).forEach(line -> lines.add(Keys.prose(line))));
    new FigureNodes(desk).lacks(change).ifPresent(lines::add);
    Reading reading = then.reading(varied().id()).orElseThrow();
    for (FillRoom room : FillRoom.planned(sheet, varied().id(), reading)) {
      words.warning(room).ifPresent(line -> lines.add(Keys.prose(line, "due")));
    }
    return lines;
  }
}
