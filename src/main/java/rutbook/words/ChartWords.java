package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.drawing.Chart;
import rutbook.drawing.ForkChart;
import rutbook.drawing.OilChart;
import rutbook.drawing.SteeringChart;
import rutbook.figures.FillKind;
import rutbook.figures.ForkFigures;
import rutbook.figures.OilFigures;
import rutbook.figures.SteeringSweep;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.physics.OilLine;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Unit;

/** Figures as charts, named and in the rider's units; none where there is no figure. */
public final class ChartWords {
  private final Phrases phrases;
  private final FigureWords figures;
  private final ForkWords fork;

  public ChartWords(Phrases phrases) {
    this.phrases = phrases;
    this.figures = new FigureWords(phrases);
    this.fork = new ForkWords(phrases);
  }

  private Unit unit(Dimension dimension) {
    return phrases.display().unit(dimension);
  }

  private ForkChart forkChart() {
    return new ForkChart(figures.onCharts(), unit(Dimension.LENGTH));
  }

  /** Force against travel: the present fill with its band over the others; springs alone. */
  public Optional<Chart> fork(ForkFigures figures, Optional<Amount> frontSag) {
    List<ForkChart.Fill> others = new ArrayList<>();
    for (ForkFigures.FillCurve curve : figures.inOrder()) {
      if (curve.kind() != FillKind.PRESENT) {
        fill(fork.fill(curve), curve).ifPresent(others::add);
      }
    }
    return fill(fork.fill(figures.present()), figures.present())
        .map(present -> forkChart().of(present, others, frontSag));
  }

  /** Two forks over each other, each by its own name. */
  public Optional<Chart> compared(
      String left, ForkFigures first, String right, ForkFigures second) {
    return first
        .present()
        .drawn()
        .found()
        .flatMap(
            one ->
                second.present().drawn().found().map(other -> compared(left, one, right, other)));
  }

  /** Two curves over each other, each by its own name. */
  public Chart compared(
      String left, ForkFigures.Drawn first, String right, ForkFigures.Drawn second) {
    return forkChart()
        .compared(
            new ForkChart.Fill(left, first.curve()), new ForkChart.Fill(right, second.curve()));
  }

  /** The end of the travel of two fills, each by its own name; from a share of the travel on. */
  public Optional<Chart> ending(
      String baseline, ForkFigures was, String chosen, ForkFigures is, double share) {
    return fill(baseline, was.present())
        .flatMap(
            one -> fill(chosen, is.present()).map(other -> forkChart().ending(one, other, share)));
  }

  private static Optional<ForkChart.Fill> fill(String name, ForkFigures.FillCurve curve) {
    return curve.drawn().found().map(drawn -> new ForkChart.Fill(name, drawn.curve()));
  }

  /** Viscosity against temperature of every oil that has a line; none where no oil has. */
  public Optional<Chart> oils(List<Oil> oils, Optional<OilId> inFork) {
    List<OilChart.Line> lines = new ArrayList<>();
    for (Oil oil : oils) {
      Optional<OilLine> line = OilFigures.line(oil).found();
      boolean fitted = inFork.equals(Optional.of(oil.id()));
      line.ifPresent(
          found -> lines.add(new OilChart.Line(phrases.safe(oil.name()), found, fitted)));
    }
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            OilChart.of(lines, OilFigures.RIDING, figures.onCharts(), unit(Dimension.TEMPERATURE)));
  }

  /** Trail over the heights that the sheet allows; none where it allows but one. */
  public Optional<Chart> trail(SteeringSweep sweep) {
    return steering(sweep).map(SteeringChart::trail);
  }

  /** Rake over the heights that the sheet allows. */
  public Optional<Chart> rake(SteeringSweep sweep) {
    return steering(sweep).map(SteeringChart::rake);
  }

  private Optional<SteeringChart> steering(SteeringSweep sweep) {
    List<SteeringChart.At> heights =
        sweep.rows().stream()
            .map(row -> new SteeringChart.At(row.tube(), row.steering().exact()))
            .toList();
    return heights.size() < 2
        ? Optional.empty()
        : Optional.of(
            new SteeringChart(
                heights, sweep.present(), figures.onCharts(), unit(Dimension.LENGTH)));
  }

  /** A reading of a chart as a sentence for the pointer: "200 mm: present, 345 mL 2363; …". */
  public String reading(Chart chart, Chart.Reading reading) {
    List<String> values =
        reading.values().stream()
            .map(value -> phrases.say("Figures", "value", value.name(), number(chart, value.up())))
            .toList();
    return phrases.say(
        "Figures",
        "reading",
        chart.across().title(),
        phrases.amounts().number(reading.across(), 1),
        String.join("; ", values));
  }

  /** The chart as a table of so many rows, two or more. */
  public Table table(Chart chart, int rows) {
    List<String> head = new ArrayList<>(List.of(chart.across().title()));
    chart.curves().forEach(curve -> head.add(curve.name()));
    List<List<String>> all = new ArrayList<>();
    for (Chart.Reading reading : chart.table(rows)) {
      List<String> row = new ArrayList<>();
      row.add(phrases.amounts().number(reading.across(), 1));
      for (Chart.Curve curve : chart.curves()) {
        row.add(
            reading.values().stream()
                .filter(value -> value.name().equals(curve.name()))
                .findFirst()
                .map(value -> number(chart, value.up()))
                .orElseGet(() -> phrases.say("Figures", "none")));
      }
      all.add(row);
    }
    return figures.aligned(new Table(head, all), 0);
  }

  /** With as many decimals as the axis can show apart. */
  private String number(Chart chart, double up) {
    double span = chart.up().most() - chart.up().least();
    int decimals = (int) Math.max(0, Math.min(3, 3 - Math.floor(Math.log10(span))));
    return phrases.amounts().number(up, decimals);
  }
}
