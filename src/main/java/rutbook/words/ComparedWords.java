package rutbook.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.compare.BestMoto;
import rutbook.compare.CurvePair;
import rutbook.compare.LapComparison;
import rutbook.compare.LapDifference;
import rutbook.compare.MotoLaps;
import rutbook.compare.SettingHistory;
import rutbook.compare.Spread;
import rutbook.compare.TrackDifference;
import rutbook.compare.TrackSide;
import rutbook.compare.WithoutDrift;
import rutbook.drawing.Drawing;
import rutbook.drawing.LapDots;
import rutbook.figures.ForkFigures;
import rutbook.figures.Need;
import rutbook.figures.Reserve;
import rutbook.notebook.Setting;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * What laps, tracks, curves and history say in a comparison; nothing inside the noise is called.
 */
public final class ComparedWords {
  private static final String AREA = "Compared";
  private static final double SHOWN_TENTH = 0.05;

  private final Phrases phrases;
  private final ReadingWords readings;
  private final ChangeWords changes;
  private final FigureWords figures;

  public ComparedWords(Phrases phrases) {
    this.phrases = phrases;
    this.readings = new ReadingWords(phrases);
    this.changes = new ChangeWords(phrases).spelled();
    this.figures = new FigureWords(phrases);
  }

  public String say(String key, Object... facts) {
    return phrases.say(AREA, key, facts);
  }

  /** Whether the second side is quicker, by how much, and whether that is more than noise. */
  public String laps(LapComparison laps) {
    if (laps.result().isEmpty()) {
      return say("laps." + laps.state().name());
    }
    LapDifference difference = laps.result().get();
    boolean quicker = difference.seconds() < 0;
    if (!difference.beyondNoise() && Math.abs(difference.seconds()) < SHOWN_TENTH) {
      return say("laps.same");
    }
    String way = quicker ? "laps.quicker" : "laps.slower";
    double low = quicker ? -difference.high() : difference.low();
    double high = quicker ? -difference.low() : difference.high();
    String kind =
        difference.beyondNoise() ? ".beyond" : laps.moreMotos().isPresent() ? ".inside" : ".never";
    return say(
        way + kind,
        tenths(Math.abs(difference.seconds())),
        tenths(low),
        tenths(high),
        laps.moreMotos().orElse(0),
        LapDifference.MOST_MOTOS);
  }

  /** The laps of both sides, moto by moto; one moto or more. */
  public Drawing dots(LapComparison laps, double width, double height) {
    return LapDots.of(
        columns(laps.from()), columns(laps.to()), "s", phrases.amounts().numerals(), width, height);
  }

  private List<LapDots.Column> columns(List<MotoLaps> motos) {
    return motos.stream()
        .map(
            laps ->
                new LapDots.Column(
                    say("column", laps.session().day(), laps.moto() + 1), laps.seconds()))
        .toList();
  }

  /** What the noise between motos was taken from. */
  public String noise(LapComparison laps) {
    return say("laps.pairs", laps.pairs());
  }

  private String tenths(double seconds) {
    return phrases.amounts().number(seconds, 1);
  }

  /** The reserve of both sides, or what a curve needs. */
  public List<String> reserve(CurvePair curves) {
    if (!curves.both()) {
      List<Need> needs = new ArrayList<>(curves.from().needs());
      curves.to().needs().stream().filter(need -> !needs.contains(need)).forEach(needs::add);
      return List.of(say("reserve.none", figures.needs(needs)));
    }
    ForkFigures.Drawn from = curves.from().found().orElseThrow();
    ForkFigures.Drawn to = curves.to().found().orElseThrow();
    List<String> said = new ArrayList<>();
    said.add(reserve("reserve.from", from.whole(), to.whole()));
    if (from.fromSag().isPresent() && to.fromSag().isPresent()) {
      said.add(reserve("reserve.sag", from.fromSag().get(), to.fromSag().get()));
    }
    return said;
  }

  private String reserve(String key, Reserve from, Reserve to) {
    String before = joule(from);
    String after = joule(to);
    return before.equals(after) ? say(key + ".same", before) : say(key, before, after);
  }

  private String joule(Reserve reserve) {
    return phrases.amounts().number(reserve.line(), 0);
  }

  /** How often a track was ridden, and which moto went best. */
  public String track(TrackSide side) {
    String ridden = say("track", side.track().name(), side.sessions().size(), side.motos());
    Optional<BestMoto> best = side.best();
    return best.map(moto -> say("track.best", ridden, moto.session().day(), moto.moto() + 1))
        .orElse(ridden);
  }

  /** A setting at both tracks, with the difference of its medians and its sense. */
  public String setting(TrackDifference row) {
    String name = phrases.sentence(readings.setting(row.setting()));
    String first = spread(row.setting(), row.first());
    String second = spread(row.setting(), row.second());
    if (row.first().isEmpty() || row.second().isEmpty()) {
      return say("setting.alike", name, first, second);
    }
    Amount from = row.first().get().median();
    Amount to = row.second().get().median();
    return from.sameQuantity(to)
        ? say("setting.alike", name, first, second)
        : say("setting", name, first, second, changes.difference(row.setting(), from, to));
  }

  private String spread(Setting setting, Optional<Spread> spread) {
    if (spread.isEmpty()) {
      return say("spread.none");
    }
    Spread it = spread.get();
    String median = median(setting, it.median());
    if (it.sessions() == 1) {
      return say("spread", median);
    }
    return it.least().sameQuantity(it.most())
        ? say("spread.all", median, it.sessions())
        : say("spread.range", median, bare(it.least()), bare(it.most()), it.sessions());
  }

  /** Sessions half at one number and half at another have a middle that nobody can set. */
  private String median(Setting setting, Amount median) {
    BigDecimal step = setting.scale().step().value();
    BigDecimal below = median.value().divide(step, 0, RoundingMode.FLOOR).multiply(step);
    boolean counted = setting.dimension() == Dimension.CLICKS;
    return !counted || below.compareTo(median.value()) == 0
        ? readings.amount(setting, median)
        : say(
            "spread.tie",
            bare(median.withValue(below)),
            readings.amount(setting, median.withValue(below.add(step))));
  }

  private String bare(Amount amount) {
    return phrases.amounts().numberOf(amount);
  }

  /** How likely so uneven a split is by chance, and what is left without drift. */
  public List<String> sure(TrackDifference row) {
    List<String> said = new ArrayList<>();
    row.second()
        .filter(it -> row.beyond() > 0)
        .ifPresent(it -> said.add(say("habit", row.beyond(), it.sessions())));
    if (row.chance() > 0) {
      said.add(
          say("chance", phrases.amounts().number(1 / row.chance(), row.chance() > 0.1 ? 1 : 0)));
    }
    row.withoutDrift().ifPresent(without -> said.add(without(row, without)));
    return said;
  }

  /** What is left of a difference without drift, with its interval. */
  public String without(TrackDifference row, WithoutDrift without) {
    Setting setting = row.setting();
    List<String> taken =
        without.taken().stream().sorted().map(each -> say("Drift." + each.name())).toList();
    boolean less = without.by().value().signum() < 0;
    Amount near = less ? without.high() : without.low();
    Amount far = less ? without.low() : without.high();
    boolean beyond = without.beyondNoise();
    return say(
        beyond ? "without.beyond" : "without",
        String.join(", ", taken),
        moved(setting, without.by()),
        beyond ? size(near) : moved(setting, near),
        beyond ? size(far) : moved(setting, far));
  }

  private String size(Amount by) {
    Amount shown = rounded(by);
    return phrases.amounts().numberOf(shown.withValue(shown.value().abs()));
  }

  private String moved(Setting setting, Amount by) {
    Amount none = by.withValue(BigDecimal.ZERO);
    return changes.difference(setting, none, rounded(by));
  }

  private static Amount rounded(Amount amount) {
    return amount.withValue(amount.value().setScale(1, RoundingMode.HALF_UP));
  }

  /** Each step of a setting with its day and, before a moto, which. */
  public List<String> steps(SettingHistory history) {
    return history.steps().stream().map(step -> step(history, step)).toList();
  }

  /** "27 Jun 2026, moto 1: 3 mm". */
  public String step(SettingHistory history, SettingHistory.Step step) {
    String reading = readings.reading(history.setting(), step.reading());
    return step.moto().isPresent()
        ? say(
            "history.step",
            step.day(),
            phrases.say("Cli", "moto", step.moto().getAsInt() + 1),
            reading)
        : say("history.start", step.day(), reading);
  }

  public String mark(SettingHistory history, SettingHistory.Mark mark) {
    return mark.reading()
        .map(
            wanted ->
                say("history.BASELINE.to", mark.day(), readings.reading(history.setting(), wanted)))
        .orElseGet(() -> say("history." + mark.kind().name(), mark.day()));
  }
}
