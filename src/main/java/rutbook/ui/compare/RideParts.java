package rutbook.ui.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import rutbook.compare.Choice;
import rutbook.compare.Comparison;
import rutbook.compare.CurvePair;
import rutbook.compare.FeelRow;
import rutbook.compare.FullComparison;
import rutbook.compare.LapComparison;
import rutbook.compare.SagRow;
import rutbook.compare.TrackDifference;
import rutbook.compare.TrackDifference.Verdict;
import rutbook.compare.TwoTracks;
import rutbook.drawing.Chart;
import rutbook.drawing.ChartDrawing;
import rutbook.drawing.ChartLayout;
import rutbook.drawing.Drawing;
import rutbook.notebook.End;
import rutbook.ui.Desk;
import rutbook.ui.PictureKey;
import rutbook.ui.controls.Keys;
import rutbook.words.CardWords;
import rutbook.words.ChartWords;
import rutbook.words.CompareWords;
import rutbook.words.ComparedWords;
import rutbook.words.ExplainWords;

/** What was measured and ridden on both sides: sag, ground, feel, laps, curves, all sessions. */
final class RideParts {
  private static final double LEAST_WIDTH = 320;
  private static final double LAPS = 150;
  private static final double CURVES = 240;

  private final Desk desk;
  private final boolean saved;
  private final CompareWords comparing;
  private final ComparedWords words;
  private final CardWords cardWords;

  /**
   * @param saved whether each chart has a key that saves it; on a picture it has none
   */
  RideParts(Desk desk, boolean saved) {
    this.desk = desk;
    this.saved = saved;
    this.comparing = new CompareWords(desk.phrases());
    this.words = new ComparedWords(desk.phrases());
    this.cardWords = new CardWords(desk.phrases());
  }

  /** The parts that have something to show, in the order of the page. */
  List<Node> of(FullComparison comparison) {
    List<Node> parts = new ArrayList<>();
    comparison.tracks().ifPresent(tracks -> parts.add(tracks(tracks)));
    sagAndGround(comparison).ifPresent(parts::add);
    explained(comparison).ifPresent(parts::add);
    if (!comparison.sides().feel().isEmpty()) {
      parts.add(feel(comparison.sides().feel()));
    }
    parts.add(laps(comparison.laps()));
    parts.add(curves(comparison));
    return parts;
  }

  private static VBox part(String id, String title, List<Node> nodes) {
    VBox part = new VBox(4, Keys.label(title, "card-title"));
    part.getChildren().addAll(nodes);
    part.setId(id);
    return part;
  }

  private Optional<Node> sagAndGround(FullComparison comparison) {
    List<Node> lines = new ArrayList<>();
    for (SagRow row : comparison.sides().sag()) {
      lines.add(Keys.prose(cardWords.sag(row, isKept(comparison.sides(), row))));
    }
    String from = comparing.conditions(comparison.sides().from().conditions());
    String to = comparing.conditions(comparison.sides().to().conditions());
    if (!from.isEmpty() && !to.isEmpty()) {
      lines.add(Keys.prose(desk.phrases().sentence(desk.phrases().say("Cli", "ground", from, to))));
    }
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(part("compare-sag", desk.text("compare.measured"), lines));
  }

  /** Whether a side's sag is what its baseline keeps, rather than what was measured. */
  private static boolean isKept(Comparison sides, SagRow row) {
    return row.end() == End.REAR
        && (sides.from().choice() instanceof Choice.OfBaseline
            || sides.to().choice() instanceof Choice.OfBaseline);
  }

  private Optional<Node> explained(FullComparison comparison) {
    ExplainWords explaining = new ExplainWords(desk.phrases());
    List<Node> lines = new ArrayList<>();
    explaining.sentences(comparison.explained()).forEach(line -> lines.add(Keys.prose(line)));
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(part("compare-explained", explaining.title(), lines));
  }

  private Node feel(List<FeelRow> rows) {
    GridPane grid = new GridPane();
    grid.setHgap(18);
    grid.setVgap(2);
    grid.addRow(
        0,
        new Label(),
        Keys.label("● " + cardWords.say("feel.from"), "group-title"),
        Keys.label("◇ " + cardWords.say("feel.to"), "group-title"));
    for (int i = 0; i < rows.size(); i++) {
      FeelRow row = rows.get(i);
      grid.addRow(
          i + 1,
          Keys.label(desk.phrases().sentence(comparing.feel(row.key()))),
          Keys.label(severity(row.from()), "number"),
          Keys.label(severity(row.to()), "number"));
    }
    return part("compare-feel", cardWords.say("feel"), List.of(grid));
  }

  private String severity(OptionalInt severity) {
    return severity.isPresent()
        ? String.valueOf(severity.getAsInt())
        : desk.phrases().say("Compare", "not-mentioned");
  }

  private Node laps(LapComparison laps) {
    String verdict = desk.phrases().sentence(words.laps(laps));
    List<Node> nodes = new ArrayList<>(List.of(Keys.prose(verdict)));
    if (laps.result().isPresent()) {
      nodes.add(
          new WideDrawing(LEAST_WIDTH, LAPS, width -> words.dots(laps, width, LAPS), verdict));
      nodes.add(Keys.prose(words.noise(laps), "soft"));
      nodes.addAll(saving("compare-laps", verdict, width -> words.dots(laps, width, LAPS)));
    }
    return part("compare-laps", desk.text("compare.laps"), nodes);
  }

  private Node curves(FullComparison comparison) {
    CurvePair curves = comparison.curves();
    List<Node> nodes = new ArrayList<>();
    if (curves.both() && !curves.same()) {
      Chart chart =
          new ChartWords(desk.phrases())
              .compared(
                  comparing.choice(comparison.sides().from().choice()),
                  curves.from().found().orElseThrow(),
                  comparing.choice(comparison.sides().to().choice()),
                  curves.to().found().orElseThrow());
      nodes.add(
          new WideDrawing(
              LEAST_WIDTH,
              CURVES,
              width -> ChartDrawing.of(chart, new ChartLayout.Size(width, CURVES, 1)),
              words.say("curve")));
      nodes.addAll(
          saving(
              "compare-curves",
              words.say("curve"),
              width -> ChartDrawing.of(chart, new ChartLayout.Size(width, 2 * CURVES, 1))));
    }
    words.reserve(curves).forEach(line -> nodes.add(Keys.prose(line)));
    return part("compare-curves", desk.text("compare.fork"), nodes);
  }

  /** The key that saves a chart as a picture, and what it tells. */
  private List<Node> saving(String id, String title, DoubleFunction<Drawing> drawn) {
    if (!saved) {
      return List.of();
    }
    PictureKey key =
        new PictureKey(
            desk,
            id + "-save",
            () -> {
              String bike = PictureKey.title(desk);
              Drawing drawing = drawn.apply(desk.em() * PictureKey.CHART_WIDTH);
              return Optional.of(
                  new PictureKey.Picture(
                      bike,
                      PictureKey.sheet(
                          bike, Keys.prose(title, "card-title"), PictureKey.drawn(drawing))));
            });
    return List.of(key.key(), key.told());
  }

  private Node tracks(TwoTracks tracks) {
    List<Node> lines = new ArrayList<>();
    lines.add(Keys.prose(words.track(tracks.first())));
    lines.add(Keys.prose(words.track(tracks.second())));
    for (Verdict verdict : List.of(Verdict.CONSISTENT, Verdict.DRIFT, Verdict.CHANCE)) {
      List<TrackDifference> rows = tracks.settings(verdict);
      if (!rows.isEmpty()) {
        lines.add(Keys.label(words.say("group." + verdict.name()), "group-title"));
      }
      for (TrackDifference row : rows) {
        lines.add(Keys.prose(words.setting(row)));
        if (verdict == Verdict.CONSISTENT || verdict == Verdict.DRIFT) {
          words.sure(row).forEach(line -> lines.add(Keys.prose(line, "soft")));
        }
      }
    }
    String title = words.say("tracks", name(tracks.first()), name(tracks.second()));
    return part("compare-tracks", title, lines);
  }

  private static String name(rutbook.compare.TrackSide side) {
    return side.track().name();
  }
}
