package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import rutbook.figures.Figure;
import rutbook.figures.SagFigures;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Rider;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.words.SagWords;

/** The worksheet of the rear sag measured last: what it says of the spring, and what would fit. */
final class SagSheet extends VBox {
  SagSheet(BikeDesk desk, Runnable measure) {
    super(12);
    BikeModel model = desk.model();
    setId("sag-sheet");
    getStyleClass().add("wash");
    FigureNodes nodes = new FigureNodes(desk);
    Optional<Entry.SagMeasured> rear = model.timeline().sag(End.REAR);
    String title =
        rear.map(sag -> nodes.words().say("sag.title", sag.day()))
            .orElseGet(() -> desk.text("sag.title"));
    List<Node> lines = new ArrayList<>();
    lines.add(Keys.prose(title, "card-title"));
    lines.add(Rows.keys(Keys.mainKey("sag-add", desk.text("sag.add"), measure)));
    if (rear.isEmpty()) {
      lines.add(Keys.prose(desk.text("sag.start"), "soft"));
    } else {
      add(lines, desk, nodes, rear.get());
    }
    getChildren().setAll(lines);
  }

  private static void add(
      List<Node> lines, BikeDesk desk, FigureNodes nodes, Entry.SagMeasured measured) {
    BikeModel model = desk.model();
    Figure<SagFigures> figure =
        SagFigures.of(
            model.sheet(),
            model.timeline().after(measured.id()),
            measured,
            weight(model, measured));
    nodes.lacks(figure).ifPresent(lines::add);
    if (figure.found().isEmpty()) {
      return;
    }
    SagFigures sag = figure.found().get();
    SagWords words = new SagWords(desk.desk().phrases());
    lines.add(Keys.prose(words.verdict(sag), "strong"));
    words.wanted(sag).forEach(said -> lines.add(Keys.prose(said)));
    lines.add(nodes.table(desk.text("sag.measured"), words.measured(sag)));
    lines.add(nodes.table(nodes.words().say("springs", sag.target().race()), words.springs(sag)));
    lines.add(Keys.prose(words.collar(sag), "soft"));
    nodes.assumed(List.of(figure)).ifPresent(lines::add);
  }

  /** Of the rider who rode last before the day, or the notebook's only one. */
  private static Optional<Amount> weight(BikeModel model, Entry.SagMeasured measured) {
    List<Rider> riders = model.notebook().shelf().riders();
    return model.timeline().sessions().stream()
        .filter(session -> !session.day().isAfter(measured.day()))
        .reduce((earlier, later) -> later)
        .flatMap(session -> model.notebook().shelf().rider(session.rider()))
        .or(() -> riders.size() == 1 ? Optional.of(riders.get(0)) : Optional.empty())
        .flatMap(rider -> rider.weightOn(measured.day()));
  }
}
