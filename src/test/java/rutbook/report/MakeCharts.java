package rutbook.report;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.imageio.ImageIO;
import rutbook.drawing.Chart;
import rutbook.drawing.ChartDrawing;
import rutbook.drawing.ChartLayout;
import rutbook.drawing.ChartName;
import rutbook.drawing.Drawing;
import rutbook.drawing.ForkChart;
import rutbook.drawing.OilChart;
import rutbook.drawing.SteeringChart;
import rutbook.figures.FillKind;
import rutbook.figures.ForkFigures;
import rutbook.figures.OilFigures;
import rutbook.figures.Riding;
import rutbook.figures.SteeringSweep;
import rutbook.notebook.Notebook;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Length;
import rutbook.units.Temperature;
import rutbook.words.FigureWords;
import rutbook.words.ForkWords;
import rutbook.words.Phrases;

/**
 * Paints the charts of the sample season: the one of the README into {@code src/site/pictures}, all
 * of them, large and small, into {@code target/charts} to be looked at.
 */
public final class MakeCharts {
  private static final Phrases PHRASES = Phrases.english(Display.METRIC);
  private static final Function<ChartName, String> NAMES = new FigureWords(PHRASES)::chart;

  private MakeCharts() {}

  public static void main(String[] arguments) throws IOException {
    File site = new File("src/site/pictures");
    write(ChartDrawing.of(fork(), size(760, 430)), 2, new File(site, "fork-curve.png"));
    File folder = new File("target/charts");
    for (Map.Entry<String, Chart> each : charts().entrySet()) {
      write(
          ChartDrawing.of(each.getValue(), size(760, 430)),
          1,
          new File(folder, each.getKey() + "-large.png"));
      write(
          ChartDrawing.of(each.getValue(), size(320, 260)),
          1.5,
          new File(folder, each.getKey() + "-small.png"));
    }
  }

  private static ChartLayout.Size size(double width, double height) {
    return new ChartLayout.Size(width, height, 1);
  }

  private static void write(Drawing drawing, double zoom, File file) throws IOException {
    file.getParentFile().mkdirs();
    ImageIO.write(PaintedDrawing.of(drawing, zoom), "png", file);
  }

  /** Every kind of chart, of the sample season. */
  static Map<String, Chart> charts() {
    Notebook season = Samples.season();
    Timeline timeline = Timeline.of(season, season.bikes().get(0).id());
    Sheet sheet = timeline.bike().latestSheet();
    Map<String, Chart> charts = new LinkedHashMap<>();
    charts.put("fork", fork());
    charts.put("oil", oils(season));
    SteeringSweep sweep =
        SteeringSweep.of(sheet, timeline.now(), Amount.of(0, Length.MILLIMETRE))
            .found()
            .orElseThrow();
    SteeringChart steering =
        new SteeringChart(
            sweep.rows().stream()
                .map(row -> new SteeringChart.At(row.tube(), row.steering().exact()))
                .toList(),
            sweep.present(),
            NAMES,
            Length.MILLIMETRE);
    charts.put("trail", steering.trail());
    charts.put("rake", steering.rake());
    return charts;
  }

  private static Chart oils(Notebook season) {
    List<OilChart.Line> oils =
        season.shelf().oils().stream()
            .map(
                oil ->
                    new OilChart.Line(
                        oil.name(),
                        OilFigures.line(oil).found().orElseThrow(),
                        oil.name().endsWith("summer")))
            .toList();
    return OilChart.of(oils, OilFigures.RIDING, NAMES, Temperature.CELSIUS);
  }

  private static Chart fork() {
    Notebook season = Samples.season();
    Timeline timeline = Timeline.of(season, season.bikes().get(0).id());
    Sheet sheet = timeline.bike().latestSheet();
    Setup now = timeline.now();
    Riding riding = Riding.of(season.shelf(), timeline);
    ForkFigures figures = ForkFigures.of(sheet, now, riding);
    ForkWords words = new ForkWords(PHRASES);
    List<ForkChart.Fill> others = new ArrayList<>();
    for (ForkFigures.FillCurve curve : figures.inOrder()) {
      if (curve.kind() != FillKind.PRESENT) {
        others.add(fill(words, curve));
      }
    }
    return new ForkChart(NAMES, Length.MILLIMETRE)
        .of(fill(words, figures.present()), others, riding.frontSag());
  }

  private static ForkChart.Fill fill(ForkWords words, ForkFigures.FillCurve curve) {
    return new ForkChart.Fill(words.fill(curve), curve.drawn().found().orElseThrow().curve());
  }
}
