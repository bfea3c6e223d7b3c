package rutbook.report;

import java.io.File;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;
import rutbook.drawing.Chart;
import rutbook.drawing.ChartDrawing;
import rutbook.drawing.ChartLayout;
import rutbook.drawing.Drawing;
import rutbook.figures.ForkFigures;
import rutbook.figures.OilStanding;
import rutbook.figures.Riding;
import rutbook.figures.SteeringSweep;
import rutbook.notebook.Notebook;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Length;
import rutbook.words.ChartWords;
import rutbook.words.Phrases;

/**
 * Paints the charts of the sample season: the one of the README into {@code src/site/pictures}, all
 * of them, large and small, into {@code target/charts} to be looked at.
 */
public final class MakeCharts {
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
    ChartWords words = new ChartWords(Phrases.english(Display.METRIC));
    SteeringSweep sweep =
        SteeringSweep.of(sheet, timeline.now(), Amount.of(0, Length.MILLIMETRE))
            .found()
            .orElseThrow();
    Map<String, Chart> charts = new LinkedHashMap<>();
    charts.put("fork", fork());
    charts.put(
        "oil", words.oils(season.shelf().oils(), OilStanding.inFork(timeline)).orElseThrow());
    charts.put("trail", words.trail(sweep).orElseThrow());
    charts.put("rake", words.rake(sweep).orElseThrow());
    return charts;
  }

  private static Chart fork() {
    Notebook season = Samples.season();
    Timeline timeline = Timeline.of(season, season.bikes().get(0).id());
    Riding riding = Riding.of(season.shelf(), timeline);
    ForkFigures fork = ForkFigures.of(timeline.bike().latestSheet(), timeline.now(), riding);
    return new ChartWords(Phrases.english(Display.METRIC))
        .fork(fork, riding.frontSag())
        .orElseThrow();
  }
}
