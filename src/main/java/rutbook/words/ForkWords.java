package rutbook.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rutbook.figures.FillKind;
import rutbook.figures.FillRoom;
import rutbook.figures.ForkFigures;
import rutbook.figures.LegFigures;
import rutbook.figures.Reserve;
import rutbook.notebook.Side;
import rutbook.physics.ForkChange;
import rutbook.physics.ForkPoint;
import rutbook.units.Amount;
import rutbook.units.Length;
import rutbook.units.Mass;

/** The figures of a fork: what is in it, its curve, its reserve by fill. */
public final class ForkWords {
  private static final String AREA = "Figures";

  private final Phrases phrases;
  private final FigureWords figures;

  public ForkWords(Phrases phrases) {
    this.phrases = phrases;
    this.figures = new FigureWords(phrases);
  }

  public String title(ForkFigures fork) {
    return phrases.say(AREA, "fork", phrases.sentence(phrases.name(fork.kind())));
  }

  /** "Least", "nominal", "most" or "present", and of what: "most, 380 mL". */
  public String fill(ForkFigures.FillCurve curve) {
    String kind = phrases.say(AREA, "FillKind." + curve.kind().name());
    String amounts =
        String.join(
            " / ", curve.fills().stream().map(phrases.amounts()::amount).distinct().toList());
    return amounts.isEmpty() ? kind : phrases.say(AREA, "fill", kind, amounts);
  }

  /** What is in each leg, and the air that it leaves; rows that nobody knows are left out. */
  public Table legs(ForkFigures fork) {
    List<List<String>> rows = new ArrayList<>();
    row(rows, "fork.fill", fork, LegFigures::fill);
    row(rows, "fork.spring", fork, LegFigures::spring);
    row(rows, "fork.preload", fork, LegFigures::preload);
    row(rows, "fork.air", fork, LegFigures::airPressure);
    row(rows, "fork.chamber", fork, LegFigures::chamber);
    List<FillRoom> rooms = fork.room().found().orElse(List.of());
    if (rooms.size() == 2) {
      rows.add(room("fork.left", rooms, room -> phrases.amounts().amount(room.airAtFullStroke())));
      rows.add(room("fork.compression", rooms, room -> ratio(room.compression())));
    }
    return new Table(List.of("", phrases.name(Side.LEFT), phrases.name(Side.RIGHT)), rows);
  }

  private void row(
      List<List<String>> rows,
      String key,
      ForkFigures fork,
      Function<LegFigures, Optional<Amount>> of) {
    if (fork.legs().stream().anyMatch(leg -> of.apply(leg).isPresent())) {
      List<String> row = new ArrayList<>(List.of(phrases.say(AREA, key)));
      fork.legs()
          .forEach(
              leg ->
                  row.add(
                      of.apply(leg)
                          .map(phrases.amounts()::amount)
                          .orElse(phrases.say(AREA, "none"))));
      rows.add(row);
    }
  }

  private List<String> room(String key, List<FillRoom> rooms, Function<FillRoom, String> of) {
    return List.of(phrases.say(AREA, key), of.apply(rooms.get(0)), of.apply(rooms.get(1)));
  }

  private String ratio(OptionalDouble compression) {
    return compression.isEmpty()
        ? phrases.say(AREA, "locked")
        : phrases.amounts().number(compression.getAsDouble(), 1);
  }

  /** What follows from the air left at full stroke; empty when there is enough. */
  public Optional<String> warning(FillRoom room) {
    return room.verdict() == FillRoom.Verdict.FREE
        ? Optional.empty()
        : Optional.of(
            phrases.say(
                AREA,
                "room." + room.verdict().name(),
                phrases.name(room.leg()),
                room.airAtFullStroke()));
  }

  /** The curve in steps of a tenth of the travel: springs, air and total, slow and fast. */
  public Table points(ForkFigures.Drawn drawn) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < ForkFigures.POINTS; i += 10) {
      ForkPoint point = drawn.points().get(i);
      rows.add(
          List.of(
              stroke(point),
              newtons(point.coil()),
              newtons(point.air()),
              newtons(point.line()),
              newtons(point.slow()),
              newtons(point.fast())));
    }
    Table table =
        new Table(
            List.of(
                phrases.say(AREA, "column.travel"),
                phrases.say(AREA, "column.springs"),
                phrases.say(AREA, "column.air"),
                phrases.say(AREA, "column.total"),
                phrases.say(AREA, "column.slow"),
                phrases.say(AREA, "column.fast")),
            rows);
    return figures.aligned(table, 0);
  }

  private String stroke(ForkPoint point) {
    BigDecimal millimetres =
        BigDecimal.valueOf(point.stroke() * 1000).setScale(1, RoundingMode.HALF_UP);
    return phrases.amounts().amount(new Amount(millimetres, Length.MILLIMETRE));
  }

  private String newtons(double force) {
    return phrases.say(AREA, "newtons", phrases.amounts().number(force, 0));
  }

  private String joules(double energy) {
    return phrases.amounts().number(energy, 0);
  }

  /** Air force at the end of the travel, reserve and drop height of each fill. */
  public Table reserves(ForkFigures fork, Function<ForkFigures.Drawn, Optional<Reserve>> which) {
    List<List<String>> rows = new ArrayList<>();
    for (ForkFigures.FillCurve curve : fork.inOrder()) {
      Optional<ForkFigures.Drawn> drawn = curve.drawn().found();
      Optional<Reserve> reserve = drawn.flatMap(which);
      if (reserve.isPresent()) {
        ForkPoint end = drawn.get().points().get(ForkFigures.POINTS - 1);
        rows.add(
            List.of(
                fill(curve),
                newtons(end.air()),
                phrases.say(
                    AREA,
                    "joules",
                    joules(reserve.get().slow()),
                    joules(reserve.get().line()),
                    joules(reserve.get().fast())),
                reserve
                    .get()
                    .dropHeight()
                    .found()
                    .map(phrases.amounts()::amount)
                    .orElse(phrases.say(AREA, "none"))));
      }
    }
    return new Table(
        List.of(
            phrases.say(AREA, "column.fill"),
            phrases.say(AREA, "column.end-air"),
            phrases.say(AREA, "column.reserve"),
            phrases.say(AREA, "column.drop")),
        rows);
  }

  /** What another fill does: every share names its quantity. */
  public List<String> change(ForkChange change) {
    List<String> said = new ArrayList<>();
    share(said, "change.middle-air", change.middleAirForce());
    share(said, "change.end-air", change.endAirForce());
    share(said, "change.end-total", change.endForce());
    share(said, "change.reserve", change.reserve());
    return said;
  }

  private void share(List<String> said, String key, OptionalDouble share) {
    if (share.isPresent()) {
      said.add(phrases.say(AREA, key, figures.share(share.getAsDouble())));
    }
  }

  /** The mass that the front carries, from its sag. */
  public Optional<String> mass(ForkFigures fork) {
    return fork.frontMass()
        .found()
        .map(
            mass ->
                phrases.say(
                    AREA, "fork.mass", Amount.of(String.valueOf(Math.round(mass)), Mass.KILOGRAM)));
  }

  /** The name of a fill alone. */
  public String fill(FillKind kind) {
    return phrases.say(AREA, "FillKind." + kind.name());
  }
}
