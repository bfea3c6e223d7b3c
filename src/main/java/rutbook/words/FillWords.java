package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rutbook.drawing.Chart;
import rutbook.figures.Figure;
import rutbook.figures.FillRoom;
import rutbook.figures.ForkFigures;
import rutbook.figures.Reserve;
import rutbook.physics.ForkChange;
import rutbook.physics.ForkPoint;
import rutbook.physics.Room;
import rutbook.rebuild.BothLegs;
import rutbook.rebuild.ChosenFill;

/** What a fill does, said where it is entered: forces, reserve, room before it locks, both legs. */
public final class FillWords {
  private static final String AREA = "Bench";

  /** The curve is drawn from here on: a change of oil is felt in the last third of the travel. */
  private static final double DRAWN_FROM = 2.0 / 3;

  private final Phrases phrases;
  private final FigureWords figures;
  private final ReadingWords readings;

  public FillWords(Phrases phrases) {
    this.phrases = phrases;
    this.figures = new FigureWords(phrases);
    this.readings = new ReadingWords(phrases);
  }

  private String baseline(ChosenFill fill) {
    return phrases.say(AREA, "fill.baseline", readings.brief(fill.before()));
  }

  private String chosen(ChosenFill fill) {
    return phrases.say(AREA, "fill.chosen", readings.brief(fill.chosen()));
  }

  /** The end of the travel with the baseline's fill and with the chosen one. */
  public Optional<Chart> chart(ChosenFill fill) {
    return new ChartWords(phrases)
        .ending(baseline(fill), fill.was(), chosen(fill), fill.is(), DRAWN_FROM);
  }

  /** Forces and reserve of both fills and the change in per cent; empty where there is no curve. */
  public Optional<Table> table(ChosenFill fill) {
    Optional<ForkFigures.Drawn> was = fill.was().present().drawn().found();
    Optional<ForkFigures.Drawn> is = fill.is().present().drawn().found();
    return was.flatMap(
        before ->
            is.flatMap(
                now -> fill.change().found().map(change -> table(fill, before, now, change))));
  }

  private Table table(
      ChosenFill fill, ForkFigures.Drawn was, ForkFigures.Drawn is, ForkChange change) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(force("fill.middle", middle(was).air(), middle(is).air(), change.middleAirForce()));
    rows.add(force("fill.end", end(was).air(), end(is).air(), change.endAirForce()));
    rows.add(force("fill.end-total", end(was).line(), end(is).line(), change.endForce()));
    rows.add(reserve(was, is));
    return new Table(
        List.of(
            "",
            phrases.say(AREA, "fill.was"),
            phrases.say(AREA, "fill.is"),
            phrases.say(AREA, "fill.change")),
        rows);
  }

  private static ForkPoint middle(ForkFigures.Drawn drawn) {
    return drawn.points().get(ForkFigures.POINTS / 2);
  }

  private static ForkPoint end(ForkFigures.Drawn drawn) {
    return drawn.points().get(ForkFigures.POINTS - 1);
  }

  private List<String> force(String key, double was, double is, OptionalDouble share) {
    return row(phrases.say(AREA, key), was, is, "newtons", share);
  }

  private List<String> row(String name, double was, double is, String unit, OptionalDouble share) {
    Function<Double, String> said = value -> figures.say(unit, phrases.amounts().number(value, 0));
    return List.of(
        name,
        said.apply(was),
        said.apply(is),
        share.isPresent() ? figures.share(share.getAsDouble()) : "");
  }

  /** From the front sag on, where that is known; otherwise from full extension. */
  private List<String> reserve(ForkFigures.Drawn was, ForkFigures.Drawn is) {
    Reserve before = was.fromSag().orElse(was.whole());
    Reserve now = is.fromSag().orElse(is.whole());
    String name =
        was.fromSag().isPresent()
            ? phrases.say(AREA, "fill.reserve.sag", before.from())
            : phrases.say(AREA, "fill.reserve.whole");
    OptionalDouble share =
        before.line() > 0
            ? OptionalDouble.of(now.line() / before.line() - 1)
            : OptionalDouble.empty();
    return row(name, before.line(), now.line(), "joule", share);
  }

  /** How much oil is left before the fork locks on it, and by what that is reckoned. */
  public List<String> room(ChosenFill fill) {
    return fill.room().map(room -> room(fill, room)).orElse(List.of());
  }

  private List<String> room(ChosenFill fill, Figure<List<FillRoom>> room) {
    List<FillRoom> legs = room.found().orElse(List.of());
    boolean alike = !fill.chosen().legsDiffer();
    return legs.stream()
        .limit(alike ? 1 : legs.size())
        .map(leg -> new ForkWords(phrases).warning(leg).orElseGet(() -> room(leg, alike)))
        .toList();
  }

  private String room(FillRoom leg, boolean alike) {
    String key = alike ? "fill.room.each" : "fill.room.leg";
    return phrases.say(
        AREA,
        leg.measured() ? key : key + ".estimate",
        leg.airAtFullStroke(),
        leg.roomForOil(),
        leg.leg());
  }

  /** Why the figures are estimates, and what would make them exact. */
  public List<String> assumed(ChosenFill fill) {
    List<Figure<?>> all = new ArrayList<>(List.of(fill.is().present().drawn()));
    fill.room().ifPresent(all::add);
    List<String> lines = new ArrayList<>();
    if (fill.room().isPresent()) {
      lines.add(phrases.say(AREA, "fill.margin", (int) Room.MOST_RATIO));
    }
    lines.addAll(figures.assumed(all));
    return lines;
  }

  /** What is missing before there can be a curve; empty when nothing is. */
  public Optional<String> lacks(ChosenFill fill) {
    return fill.change().needs().isEmpty()
        ? Optional.empty()
        : Optional.of(figures.say("no-figure", figures.needs(fill.change().needs())));
  }

  /** Both legs beside each other, and how far apart they may be. */
  public String legs(BothLegs legs) {
    if (legs.unfilled().isPresent()) {
      return phrases.say(AREA, "legs.alike", legs.unfilled().get(), legs.mayDiffer());
    }
    String left = readings.value(legs.setting(), legs.reading().values().get(0));
    String right = readings.value(legs.setting(), legs.reading().values().get(1));
    return phrases.say(
        AREA, legs.differ() ? "legs.apart" : "legs.equal", left, right, legs.mayDiffer());
  }
}
