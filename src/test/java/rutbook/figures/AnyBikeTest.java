package rutbook.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import rutbook.json.RulesJson;
import rutbook.notebook.Bike;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Oil;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.physics.ForkPoint;
import rutbook.rebuild.BenchAdvice;
import rutbook.rebuild.Remark;
import rutbook.rebuild.ReturnToBaseline;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Length;
import rutbook.units.Temperature;
import rutbook.words.ChartWords;
import rutbook.words.FigureWords;
import rutbook.words.ForkWords;
import rutbook.words.GasWords;
import rutbook.words.OilWords;
import rutbook.words.Phrases;
import rutbook.words.RemarkWords;
import rutbook.words.SagWords;
import rutbook.words.SteeringWords;
import rutbook.words.Table;

/** Whatever notebook the model accepts: a figure is a number, or says what it needs. */
class AnyBikeTest {
  private final Phrases phrases = Phrases.english(Display.US);
  private final ChartWords charts = new ChartWords(phrases);
  private int figures;

  @Property(tries = 250, seed = "51")
  void noNumberThatIsNoneReachesAnAnswer(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 0, max = 6) int entries) {
    Notebook notebook = Notebooks.of(seed, entries);
    for (Bike bike : notebook.bikes()) {
      Timeline timeline = Timeline.of(notebook, bike.id());
      for (Sheet sheet : bike.sheets()) {
        fork(notebook, timeline, sheet);
        rear(timeline, sheet);
        gas(timeline, sheet);
        advice(notebook, timeline, sheet);
      }
    }
    oils(notebook.shelf().oils());
  }

  private void fork(Notebook notebook, Timeline timeline, Sheet sheet) {
    Riding riding = Riding.of(notebook.shelf(), timeline);
    ForkFigures fork = ForkFigures.of(sheet, timeline.now(), riding);
    ForkWords words = new ForkWords(phrases);
    said(fork.frontMass(), mass -> finite(mass));
    said(fork.room(), rooms -> rooms.forEach(room -> words.warning(room).ifPresent(this::plain)));
    for (ForkFigures.FillCurve curve : fork.inOrder()) {
      plain(words.fill(curve));
      said(
          curve.drawn(),
          drawn -> {
            for (ForkPoint point : drawn.points()) {
              finite(point.coil(), point.air(), point.slow(), point.line(), point.fast());
              assertThat(point.slow()).isLessThanOrEqualTo(point.fast() + 1e-6);
            }
            finite(drawn.whole().slow(), drawn.whole().line(), drawn.whole().fast());
            plain(words.points(drawn));
          });
    }
    charts.fork(fork, riding.frontSag()).ifPresent(chart -> plain(charts.table(chart, 11)));
    moreHoldsMore(fork);
    plain(words.legs(fork));
    plain(words.reserves(fork, drawn -> Optional.of(drawn.whole())));
    plain(words.reserves(fork, ForkFigures.Drawn::fromSag));
  }

  /** The most oil, or pressure, that the sheet allows holds more than the least. */
  private static void moreHoldsMore(ForkFigures fork) {
    Optional<Double> least = reserve(fork, FillKind.LEAST);
    Optional<Double> most = reserve(fork, FillKind.MOST);
    if (least.isPresent() && most.isPresent()) {
      assertThat(least.get()).isLessThanOrEqualTo(most.get() + 1e-9);
    }
  }

  private static Optional<Double> reserve(ForkFigures fork, FillKind kind) {
    return Optional.ofNullable(fork.curves().get(kind))
        .flatMap(curve -> curve.drawn().found())
        .map(drawn -> drawn.whole().line());
  }

  private void rear(Timeline timeline, Sheet sheet) {
    SagWords words = new SagWords(phrases);
    for (Entry.SagMeasured measured : timeline.entries(Entry.SagMeasured.class)) {
      if (measured.end() != End.FRONT) {
        said(
            SagFigures.of(sheet, timeline.now(), measured, Optional.empty()),
            sag -> {
              plain(words.measured(sag));
              plain(words.springs(sag));
              words.wanted(sag).forEach(this::plain);
              plain(words.verdict(sag));
              finite(sag.wanted().share());
              inside(sheet, sag);
            });
      }
    }
    Amount more = Amount.of(5, Length.MILLIMETRE);
    said(
        SteeringSweep.of(sheet, timeline.now(), more),
        sweep -> {
          plain(new SteeringWords(phrases).sweep(sweep));
          charts.trail(sweep).ifPresent(chart -> plain(charts.table(chart, 5)));
          charts.rake(sweep).ifPresent(chart -> plain(charts.table(chart, 5)));
        });
    said(LevelFigures.ofLevel(sheet, more), level -> plain(new OilWords(phrases).level(level)));
  }

  /** What is offered lies inside the sheet's limits, and what is suggested is held there. */
  private static void inside(Sheet sheet, SagFigures sag) {
    Setting spring = sheet.settings(Role.SHOCK_SPRING).get(0);
    Setting preload = sheet.settings(Role.SHOCK_PRELOAD).get(0);
    sag.wanted().held().ifPresent(held -> assertThat(sheet.limits(spring).contains(held)).isTrue());
    for (SagFigures.AtHand each : sag.springs()) {
      if (each.offered()) {
        assertThat(sheet.limits(spring).contains(each.rate())).isTrue();
        assertThat(sheet.limits(preload).contains(each.preload().preload())).isTrue();
      }
    }
  }

  private void gas(Timeline timeline, Sheet sheet) {
    GasFigures.At low =
        new GasFigures.At(
            Optional.of(Amount.of(100, Length.METRE)),
            Optional.of(Amount.of(5, Temperature.CELSIUS)));
    GasFigures.At high =
        new GasFigures.At(
            Optional.of(Amount.of(6000, Length.FOOT)),
            Optional.of(Amount.of(100, Temperature.FAHRENHEIT)));
    List<GasFigures.Line> lines = GasFigures.of(sheet, timeline.now(), low, high);
    plain(new GasWords(phrases).moves(lines));
    new GasWords(phrases).notes(lines).forEach(this::plain);
    lines.forEach(line -> said(line.moved(), moved -> {}));
  }

  private void oils(List<Oil> oils) {
    List<OilStanding> standings = new ArrayList<>();
    for (Oil oil : oils) {
      standings.add(OilStanding.of(oil, Optional.empty()));
      for (Oil other : oils) {
        said(OilFigures.ratio(oil, other, Optional.empty()), ratio -> finite(ratio.ratio()));
        said(OilFigures.blended(oil, other, 0.3, Optional.empty()), blend -> {});
      }
    }
    plain(new OilWords(phrases).shelf(standings, OilFigures.RIDING));
    charts.oils(oils, Optional.empty()).ifPresent(chart -> plain(charts.table(chart, 11)));
  }

  private void advice(Notebook notebook, Timeline timeline, Sheet sheet) {
    BenchAdvice advice = BenchAdvice.of(notebook, timeline, RulesJson.ofTheTrade());
    Setup wild = timeline.now();
    for (Setting setting : sheet.settings()) {
      Amount most = sheet.limits(setting).most();
      Reading beyond =
          wild.reading(setting.id())
              .filter(reading -> !reading.amounts().isEmpty())
              .map(reading -> reading.map(any -> most.plus(setting.scale().step())))
              .orElse(null);
      wild = beyond == null ? wild : wild.with(Placed.found(setting.id(), beyond));
    }
    ReturnToBaseline back = ReturnToBaseline.of(sheet, wild, timeline.now(), advice);
    back.settings()
        .forEach(
            each -> {
              for (Remark remark : each.remarks()) {
                plain(new RemarkWords(phrases).remark(sheet, remark));
                if (remark instanceof Remark.MakesUp makesUp) {
                  assertThat(makesUp.to().amounts())
                      .allMatch(sheet.limits(makesUp.setting())::contains);
                }
              }
            });
  }

  private <T> void said(Figure<T> figure, java.util.function.Consumer<T> look) {
    FigureWords words = new FigureWords(phrases);
    figure.assumed().forEach(each -> plain(words.assumed(each)));
    if (figure.found().isEmpty()) {
      assertThat(figure.needs()).isNotEmpty();
      plain(words.needs(figure.needs()));
    } else {
      figures++;
      look.accept(figure.found().get());
    }
  }

  private static void finite(double... numbers) {
    for (double number : numbers) {
      assertThat(number).isFinite();
    }
  }

  private void plain(Table table) {
    table.rows().forEach(row -> row.forEach(this::plain));
  }

  private void plain(String said) {
    assertThat(said).doesNotContain("NaN", "∞", "Infinity");
  }

  /** The random bikes are not all so bare that there is nothing to hold. */
  @Test
  void randomBikesHaveFigures() {
    for (long seed = 0; seed < 60; seed++) {
      noNumberThatIsNoneReachesAnAnswer(seed, 4);
    }
    assertThat(figures).isGreaterThan(100);
  }
}
