package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import rutbook.figures.Figure;
import rutbook.figures.OilFigures;
import rutbook.notebook.Oil;
import rutbook.ui.controls.AskOne;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.Dimension;
import rutbook.words.OilWords;

/** One oil in place of another, or both mixed, at a temperature. */
final class OilTry extends VBox {
  private static final int HUNDRED = 100;

  private final BikeDesk desk;
  private final AskOne<Oil> old;
  private final AskOne<Oil> next;
  private final AskText<Optional<Amount>> warmth;
  private final AskText<Optional<Integer>> part;
  private final VBox said = new VBox(6);

  /**
   * @param oils two or more
   */
  OilTry(BikeDesk desk, List<Oil> oils, Optional<Oil> inFork) {
    super(10);
    this.desk = desk;
    Fields fields = new Fields(desk);
    Oil first = inFork.orElse(oils.get(0));
    Oil other = oils.stream().filter(oil -> !oil.equals(first)).findFirst().orElse(first);
    old = choice("oil-old", oils, first);
    next = choice("oil-next", oils, other);
    warmth =
        fields.amount(
            "oil-warmth", "oil.warmth", Optional.of(OilFigures.RIDING), Dimension.TEMPERATURE);
    part = fields.whole("oil-part", "oil.part", Optional.empty());
    warmth.field().textProperty().addListener((text, before, now) -> reckon());
    part.field().textProperty().addListener((text, before, now) -> reckon());
    said.setId("oil-try-said");
    getChildren().setAll(Keys.label(desk.text("oil.try"), "strong"), old, next, warmth, part, said);
    reckon();
  }

  private AskOne<Oil> choice(String id, List<Oil> oils, Oil now) {
    return new AskOne<>(id, desk.text(id.replace('-', '.')), oils, now, Oil::name)
        .whenChosen(oil -> reckon());
  }

  private void reckon() {
    warmth.refuse("");
    part.refuse("");
    said.getChildren().clear();
    Optional<Amount> temperature;
    try {
      temperature = warmth.read();
    } catch (AmountException fault) {
      warmth.refuse(desk.words().fault(fault));
      return;
    }
    Oil before = old.read();
    Oil after = next.read();
    OilWords words = new OilWords(desk.desk().phrases());
    List<Node> lines = new ArrayList<>();
    Figure<OilFigures.Ratio> ratio = OilFigures.ratio(before, after, temperature);
    ratio.found().ifPresent(found -> lines.add(Keys.prose(words.ratio(before, after, found))));
    new FigureNodes(desk).lacks(ratio).ifPresent(lines::add);
    blend(temperature)
        .ifPresent(
            blend -> {
              blend
                  .found()
                  .ifPresent(found -> lines.add(Keys.prose(words.blend(before, after, found))));
              new FigureNodes(desk).assumed(List.of(blend)).ifPresent(lines::add);
            });
    said.getChildren().setAll(lines);
  }

  private Optional<Figure<OilFigures.Blended>> blend(Optional<Amount> temperature) {
    try {
      Optional<Integer> percent = part.read();
      if (percent.filter(each -> each < 0 || each > HUNDRED).isPresent()) {
        part.refuse(desk.text("oil.part.range"));
        return Optional.empty();
      }
      return percent.map(
          each ->
              OilFigures.blended(old.read(), next.read(), each / (double) HUNDRED, temperature));
    } catch (AmountException fault) {
      part.refuse(desk.words().fault(fault));
      return Optional.empty();
    }
  }

  /** What names the oils on offer, so that it is made anew when they change. */
  static String key(List<Oil> oils) {
    return oils.stream().map(Oil::toString).collect(Collectors.joining());
  }
}
