package rutbook.figures;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.physics.ForkChange;
import rutbook.physics.ForkCurve;
import rutbook.physics.ForkPoint;
import rutbook.physics.Polytropic;
import rutbook.units.Amount;
import rutbook.units.Length;

/**
 * The fork of a bike: what is in each leg, how much air that leaves, and its curve for the least,
 * the nominal, the most and the present fill (of an air fork: pressure).
 *
 * @param legs what is in each leg, left first
 * @param room air left at full stroke, per leg
 * @param frontMass sprung mass that the front carries with the rider, kg, from the front sag by the
 *     present curve at constant temperature, {@code m = F(sag) / (g cos ε)}
 */
public record ForkFigures(
    ForkKind kind,
    List<LegFigures> legs,
    Figure<List<FillRoom>> room,
    Figure<Double> frontMass,
    Map<FillKind, FillCurve> curves) {

  /** Points of a drawn curve: the stroke in steps of a hundredth. */
  public static final int POINTS = 101;

  private static final double GRAVITY = 9.80665;
  private static final double TYPICAL_RAKE = Math.toRadians(27);
  private static final Inputs.Believable SAG =
      new Inputs.Believable(rutbook.units.Dimension.LENGTH, 0.001, 0.5);

  public ForkFigures {
    legs = List.copyOf(legs);
    curves = Map.copyOf(curves);
  }

  /** A fill and its curve. */
  public record FillCurve(FillKind kind, List<Amount> fills, Figure<Drawn> drawn) {
    public FillCurve {
      fills = List.copyOf(fills);
    }
  }

  /**
   * A curve ready to draw, an estimate by its model: no friction, no damping.
   *
   * @param curve to read at any stroke
   * @param points {@value ForkFigures#POINTS} of them, from full extension to full travel
   * @param whole reserve from full extension
   * @param fromSag reserve from the front sag, when that is known and inside the travel
   */
  public record Drawn(
      ForkCurve curve, List<ForkPoint> points, Reserve whole, Optional<Reserve> fromSag) {
    public Drawn {
      points = List.copyOf(points);
    }
  }

  /** The figures of a fork as set up. */
  public static ForkFigures of(Sheet sheet, Setup setup, Riding riding) {
    Figure<ForkCurve> present = ForkBuild.curve(sheet, setup, riding.altitude());
    Figure<Double> mass = frontMass(sheet, present, riding.frontSag());
    Map<FillKind, FillCurve> curves = new EnumMap<>(FillKind.class);
    for (FillKind kind : FillKind.values()) {
      Optional<Setup> filled = kind.applied(sheet, setup);
      if (filled.isPresent()) {
        Figure<ForkCurve> curve =
            kind == FillKind.PRESENT
                ? present
                : ForkBuild.curve(sheet, filled.get(), riding.altitude());
        curves.put(
            kind,
            new FillCurve(
                kind,
                FillKind.fills(sheet, filled.get()),
                curve.map(line -> drawn(line, mass, rake(sheet), riding.frontSag()))));
      }
    }
    return new ForkFigures(
        sheet.parts().fork().kind(),
        LegFigures.of(sheet, setup),
        FillRoom.of(sheet, setup),
        mass,
        curves);
  }

  /** The curve of the present fill. */
  public FillCurve present() {
    return curves.get(FillKind.PRESENT);
  }

  /**
   * What going from one setup to another does to the fork, each share of a quantity with a name;
   * the reserve counts from full extension.
   */
  public static Figure<ForkChange> change(Sheet sheet, Setup before, Setup after, Riding riding) {
    return ForkBuild.curve(sheet, before, riding.altitude())
        .then(
            old ->
                ForkBuild.curve(sheet, after, riding.altitude())
                    .map(now -> ForkChange.between(old, now, 0)));
  }

  private static Figure<Double> frontMass(
      Sheet sheet, Figure<ForkCurve> present, Optional<Amount> frontSag) {
    return present.then(
        curve -> {
          Inputs inputs = new Inputs();
          double sag =
              inputs.required(
                  Quantity.FRONT_SAG, Optional.empty(), frontSag, Need.Why.NOT_NOTED, SAG);
          double rake = rake(sheet).found().orElse(TYPICAL_RAKE);
          rake(sheet).assumed().forEach(inputs::assume);
          if (sag >= curve.travel()) {
            inputs.need(Quantity.FRONT_SAG, Optional.empty(), Need.Why.BEYOND_ANY_BIKE);
          }
          if (!inputs.complete()) {
            return new Figure.Lacks<>(inputs.needs());
          }
          double mass = curve.force(sag, Polytropic.SLOW) / (GRAVITY * Math.cos(rake));
          if (!(mass >= 10 && mass <= 1000)) {
            inputs.need(Quantity.FRONT_LOAD, Optional.empty(), Need.Why.BEYOND_ANY_BIKE);
          }
          return inputs.figure(() -> mass);
        });
  }

  /** The sheet's rake in rad; one that is missing or beyond any bike is taken as 27°. */
  private static Figure<Double> rake(Sheet sheet) {
    return sheet
        .parts()
        .geometry()
        .rake()
        .map(Amount::si)
        .filter(rake -> rake >= 0.2 && rake <= 0.8)
        .map(Figure::of)
        .orElseGet(() -> new Figure.Of<>(TYPICAL_RAKE, java.util.Set.of(Assumed.RAKE_TYPICAL)));
  }

  private static Drawn drawn(
      ForkCurve curve, Figure<Double> mass, Figure<Double> rake, Optional<Amount> sag) {
    Optional<Reserve> fromSag =
        sag.map(Amount::si)
            .filter(stroke -> stroke > 0 && stroke < curve.travel())
            .map(stroke -> reserve(curve, stroke, mass, rake));
    return new Drawn(curve, curve.points(POINTS), reserve(curve, 0, mass, rake), fromSag);
  }

  private static Reserve reserve(
      ForkCurve curve, double from, Figure<Double> mass, Figure<Double> rake) {
    Figure<Amount> height =
        mass.then(
            carried ->
                rake.map(
                    angle ->
                        Si.amount(
                            curve.dropHeight(from, Polytropic.LINE, carried, angle),
                            Length.MILLIMETRE,
                            0)));
    return new Reserve(
        Si.amount(from, Length.MILLIMETRE, 1),
        curve.reserve(from, Polytropic.SLOW),
        curve.reserve(from, Polytropic.LINE),
        curve.reserve(from, Polytropic.FAST),
        height);
  }

  /** The kinds of fill that have a curve, in the order least, nominal, most, present. */
  public List<FillCurve> inOrder() {
    List<FillCurve> ordered = new ArrayList<>();
    for (FillKind kind : FillKind.values()) {
      Optional.ofNullable(curves.get(kind)).ifPresent(ordered::add);
    }
    return ordered;
  }
}
