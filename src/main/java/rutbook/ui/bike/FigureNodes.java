package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import rutbook.figures.Figure;
import rutbook.ui.PictureKey;
import rutbook.ui.controls.ChartView;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.WordTable;
import rutbook.words.ChartWords;
import rutbook.words.FigureWords;
import rutbook.words.Table;

/** Figures on the page: tables, what is missing for them, and what makes them estimates. */
final class FigureNodes {
  private final BikeDesk desk;
  private final FigureWords words;

  FigureNodes(BikeDesk desk) {
    this.desk = desk;
    this.words = new FigureWords(desk.desk().phrases());
  }

  FigureWords words() {
    return words;
  }

  /** A chart whose numbers are written as the language does. */
  static ChartView chart(BikeDesk desk, String id, double height) {
    ChartView chart =
        new ChartView(
            id,
            desk.text("chart.hint"),
            desk.text("chart.table"),
            height,
            () -> new ChartWords(desk.desk().phrases()));
    PictureKey.below(chart, desk.desk(), () -> PictureKey.title(desk.desk()));
    return chart;
  }

  /** A table under its title; without one where it is blank. */
  Node table(String title, Table table) {
    WordTable shown = new WordTable(table);
    return title.isBlank() ? shown : new VBox(4, Keys.prose(title, "group-title"), shown);
  }

  /** What is missing before there can be a figure; empty when nothing is. */
  Optional<Node> lacks(Figure<?> figure) {
    return figure.needs().isEmpty()
        ? Optional.empty()
        : Optional.of(Keys.prose(words.say("no-figure", words.needs(figure.needs())), "soft"));
  }

  /** Why the figures are estimates, and what would make them exact; nothing when they are. */
  Optional<Node> assumed(Collection<? extends Figure<?>> figures) {
    List<Figure<?>> all = new ArrayList<>(figures);
    List<String> lines = words.assumed(all);
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    VBox box = new VBox(3, Keys.prose(words.say("assumptions"), "group-title"));
    lines.forEach(line -> box.getChildren().add(Keys.prose("– " + line, "soft", "condensed")));
    box.setId("estimates");
    return Optional.of(box);
  }

  /** Below each other, with room at the sides as rows have. */
  static VBox stack(List<Node> nodes) {
    VBox box = new VBox(14);
    box.getChildren().setAll(nodes);
    box.setPadding(new javafx.geometry.Insets(10, 10, 10, 10));
    return box;
  }

  BikeDesk desk() {
    return desk;
  }
}
