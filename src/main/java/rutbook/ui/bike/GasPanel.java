package rutbook.ui.bike;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.figures.GasFigures;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.ui.controls.WordTable;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.Dimension;
import rutbook.units.Length;
import rutbook.words.GasWords;

/** What gauges read after a move: higher or lower, warmer or colder. */
final class GasPanel extends VBox {
  private final BikeDesk desk;
  private final AskText<Optional<Amount>> altitudeBefore;
  private final AskText<Optional<Amount>> altitudeAfter;
  private final AskText<Optional<Amount>> warmthBefore;
  private final AskText<Optional<Amount>> warmthAfter;
  private final VBox said = new VBox(10);

  GasPanel(BikeDesk desk, Runnable close) {
    super(12);
    this.desk = desk;
    setId("gas-panel");
    getStyleClass().add("card");
    Fields fields = new Fields(desk);
    altitudeBefore = altitude(fields, "gas-altitude-before");
    altitudeAfter = altitude(fields, "gas-altitude-after");
    warmthBefore =
        fields.amount(
            "gas-warmth-before", "gas.warmth-before", Optional.empty(), Dimension.TEMPERATURE);
    warmthAfter =
        fields.amount(
            "gas-warmth-after", "gas.warmth-after", Optional.empty(), Dimension.TEMPERATURE);
    for (AskText<?> ask : asks()) {
      ask.field().textProperty().addListener((text, before, now) -> reckon());
    }
    GridPane grid = new GridPane();
    grid.setHgap(12);
    grid.setVgap(10);
    for (int i = 0; i < 2; i++) {
      ColumnConstraints half = new ColumnConstraints();
      half.setPercentWidth(50);
      grid.getColumnConstraints().add(half);
    }
    grid.addRow(0, altitudeBefore, altitudeAfter);
    grid.addRow(1, warmthBefore, warmthAfter);
    ScrollPane scroll = Scrolling.withStop(said);
    setVgrow(scroll, Priority.ALWAYS);
    said.setPadding(new Insets(0, 14, 0, 0));
    getChildren()
        .addAll(
            Keys.label(desk.text("gas.row"), "card-title"),
            grid,
            scroll,
            Rows.keys(Keys.key("gas-close", desk.text("cancel"), close)));
    reckon();
  }

  private List<AskText<Optional<Amount>>> asks() {
    return List.of(altitudeBefore, altitudeAfter, warmthBefore, warmthAfter);
  }

  /** Heights are in metres or feet, whatever short lengths are shown in. */
  private AskText<Optional<Amount>> altitude(Fields fields, String id) {
    boolean feet = desk.desk().notebook().display().unit(Dimension.LENGTH) == Length.INCH;
    Length unit = feet ? Length.FOOT : Length.METRE;
    AskText<Optional<Amount>> ask =
        fields.maybeIn(id, id.replaceFirst("-", "."), Optional.empty(), () -> unit);
    ask.example(unit.symbol());
    return ask;
  }

  private Optional<Amount> read(AskText<Optional<Amount>> ask) {
    ask.refuse("");
    try {
      return ask.read();
    } catch (AmountException fault) {
      ask.refuse(desk.words().fault(fault));
      return Optional.empty();
    }
  }

  private void reckon() {
    GasFigures.At before = new GasFigures.At(read(altitudeBefore), read(warmthBefore));
    GasFigures.At after = new GasFigures.At(read(altitudeAfter), read(warmthAfter));
    BikeModel model = desk.model();
    List<GasFigures.Line> lines = GasFigures.of(model.sheet(), model.now(), before, after);
    GasWords words = new GasWords(desk.desk().phrases());
    said.getChildren().setAll(new WordTable(words.moves(lines)));
    words.notes(lines).forEach(note -> said.getChildren().add(Keys.prose(note, "soft")));
    Optional<Node> assumed =
        new FigureNodes(desk).assumed(lines.stream().map(GasFigures.Line::moved).toList());
    assumed.ifPresent(said.getChildren()::add);
  }

  @Override
  public void requestFocus() {
    altitudeBefore.requestFocus();
  }
}
