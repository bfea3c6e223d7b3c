package rutbook.figures;

import java.util.List;
import java.util.Optional;
import rutbook.figures.Inputs.Believable;
import rutbook.notebook.Entry;
import rutbook.notebook.MotionRatio;
import rutbook.notebook.Range;
import rutbook.notebook.RatioConvention;
import rutbook.notebook.Role;
import rutbook.notebook.SagLengths;
import rutbook.notebook.SagWindows;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.physics.Sag;
import rutbook.physics.SagWindow;
import rutbook.physics.SagWorksheet;
import rutbook.physics.SpringVerdict;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Length;
import rutbook.units.SpringRate;

/**
 * The sag worksheet of the rear end: the wheel rate from two sags and the rider's weight, what they
 * say of the spring, and the spring and preload that would meet both windows. A straight-line
 * model, an estimate on a linkage.
 *
 * @param friction how far stiction holds it either side together; only with three lengths
 * @param wheelRate with what ±2 mm on each sag allows; hangs on the share of the rider on the rear
 * @param wheelRateOfSpring by spring and motion ratio, to check the other against
 * @param verdict what free sag says of the spring; empty while race sag is outside its window
 * @param targetRace nearest edge of its window, or today's sag when inside
 * @param targetFree likewise
 * @param spring that meets both targets, with its range; it does not hang on the rider's weight
 * @param share of today's spring rate, less one
 * @param preload that it needs at the spring
 * @param springInside whether that spring lies within the sheet's limits
 * @param atHand the rider's nearest springs either side, each with what it would come to
 */
public record SagFigures(
    Amount race,
    Amount free,
    Optional<Amount> friction,
    Spread wheelRate,
    Amount wheelRateOfSpring,
    Optional<SpringVerdict> verdict,
    Amount targetRace,
    Amount targetFree,
    Spread spring,
    double share,
    Fitting preload,
    boolean springInside,
    List<AtHand> atHand) {

  /** Share of the rider's weight on the rear wheel, seated; our own choice, no source. */
  public static final double REAR_SHARE = 0.6;

  static final Believable SAG = new Believable(Dimension.LENGTH, 0, 0.4);
  private static final Believable WEIGHT = new Believable(Dimension.MASS, 20, 300);
  static final Believable RATE = new Believable(Dimension.SPRING_RATE, 5e3, 5e5);
  static final Believable PRELOAD = new Believable(Dimension.LENGTH, 0, 0.1);
  private static final double GRAVITY = 9.80665;

  public SagFigures {
    atHand = List.copyOf(atHand);
  }

  /** A number with the ends that the tape's error allows. */
  public record Spread(Amount least, Amount middle, Amount most) {}

  /**
   * A preload, and whether it can be chosen: negative cannot be fitted, and a value beyond the
   * sheet's limits is not offered.
   */
  public record Fitting(Amount preload, boolean fits) {}

  /**
   * A spring of the rider's list with race sag set to its target.
   *
   * @param free the free sag it would come to; negative when the bike alone would not settle
   * @param inside whether the spring lies within the sheet's limits
   */
  public record AtHand(Amount rate, Fitting preload, Amount free, boolean inside) {}

  /**
   * The worksheet of a measurement.
   *
   * @param weight the rider's in gear, when the measurement notes none
   */
  public static Figure<SagFigures> of(
      Sheet sheet, Setup setup, Entry.SagMeasured measured, Optional<Amount> weight) {
    Inputs inputs = new Inputs();
    Optional<Sag> lengths = measured.lengths().flatMap(SagFigures::byLengths);
    double race =
        inputs.required(
            Quantity.REAR_RACE_SAG,
            Optional.empty(),
            measured.race().or(() -> lengths.map(sag -> mm(sag.sag()))),
            Need.Why.NOT_NOTED,
            SAG);
    double free =
        inputs.required(
            Quantity.REAR_FREE_SAG, Optional.empty(), measured.free(), Need.Why.NOT_NOTED, SAG);
    if (race - free < 0.01) {
      inputs.need(Quantity.SAG_DIFFERENCE, Optional.empty(), Need.Why.BEYOND_ANY_BIKE);
    }
    double mass =
        inputs.required(
            Quantity.RIDER_WEIGHT,
            Optional.empty(),
            measured.weight().or(() -> weight),
            Need.Why.NOT_NOTED,
            WEIGHT);
    double rate =
        inputs.ofSetup(
            Quantity.SHOCK_SPRING, Side.LEFT, one(sheet, Role.SHOCK_SPRING), setup, RATE);
    double preload =
        inputs.ofSetup(
            Quantity.SHOCK_PRELOAD, Side.LEFT, one(sheet, Role.SHOCK_PRELOAD), setup, PRELOAD);
    Optional<MotionRatio> ratio = sheet.parts().shock().motionRatio();
    if (ratio.isEmpty()) {
      inputs.need(Quantity.MOTION_RATIO, Optional.empty(), Need.Why.NOT_ON_THE_SHEET);
    }
    inputs.assume(Assumed.REAR_SHARE_OF_RIDER);
    SagWindows wished = sheet.parts().sag();
    SagWindow raceWindow = window(inputs, wished.rearRace(), SagWindow.RACE);
    SagWindow freeWindow = window(inputs, wished.rearFree(), SagWindow.FREE);
    if (inputs.complete() && raceWindow.nearest(race) - freeWindow.nearest(free) < 0.01) {
      inputs.need(Quantity.SAG_TARGETS, Optional.empty(), Need.Why.BEYOND_ANY_BIKE);
    }
    return inputs.figure(
        () ->
            reckoned(
                sheet,
                new SagWorksheet(
                    mass * GRAVITY * REAR_SHARE, race, free, rate, preload, ratio(ratio.get())),
                raceWindow,
                freeWindow,
                lengths.map(sag -> mm(sag.friction()))));
  }

  private static SagFigures reckoned(
      Sheet sheet,
      SagWorksheet sheetOfSag,
      SagWindow raceWindow,
      SagWindow freeWindow,
      Optional<Amount> friction) {
    double race = raceWindow.nearest(sheetOfSag.raceSag());
    double free = freeWindow.nearest(sheetOfSag.freeSag());
    SagWorksheet.Plan plan = sheetOfSag.meeting(race, free);
    Amount spring = rate(plan.rate().middle());
    return new SagFigures(
        mm(sheetOfSag.raceSag()),
        mm(sheetOfSag.freeSag()),
        friction,
        spread(sheetOfSag.wheelRate()),
        rate(sheetOfSag.wheelRateOfSpring()),
        SpringVerdict.of(sheetOfSag.raceSag(), raceWindow, sheetOfSag.freeSag(), freeWindow),
        mm(race),
        mm(free),
        spread(plan.rate()),
        plan.share(),
        fitting(sheet, plan.preload()),
        inside(sheet, Role.SHOCK_SPRING, spring),
        atHand(sheet, sheetOfSag, plan.rate().middle(), race));
  }

  private static List<AtHand> atHand(
      Sheet sheet, SagWorksheet worksheet, double wanted, double race) {
    List<Double> rates =
        sheet.parts().shock().springsAtHand().stream()
            .map(Amount::si)
            .filter(rate -> rate >= RATE.least() && rate <= RATE.most())
            .toList();
    SagWorksheet.Neighbours nearest = SagWorksheet.nearest(wanted, rates);
    return java.util.stream.Stream.of(nearest.softer(), nearest.stiffer())
        .flatMap(Optional::stream)
        .distinct()
        .map(rate -> worksheet.with(rate, race))
        .map(
            fitted ->
                new AtHand(
                    rate(fitted.rate()),
                    fitting(sheet, fitted.preload()),
                    mm(fitted.freeSag()),
                    inside(sheet, Role.SHOCK_SPRING, rate(fitted.rate()))))
        .toList();
  }

  private static Fitting fitting(Sheet sheet, double preload) {
    Amount amount = mm(preload);
    return new Fitting(
        amount, amount.value().signum() >= 0 && inside(sheet, Role.SHOCK_PRELOAD, amount));
  }

  private static boolean inside(Sheet sheet, Role role, Amount amount) {
    return one(sheet, role)
        .map(sheet::limits)
        .filter(limits -> limits.least().dimension() == amount.dimension())
        .map(limits -> limits.contains(amount))
        .orElse(false);
  }

  private static Optional<Sag> byLengths(SagLengths lengths) {
    double extended = lengths.extended().si();
    double risen = lengths.pushedDown().si();
    double settled = lengths.liftedUp().si();
    return Math.max(extended, Math.max(risen, settled)) <= 2
        ? Optional.of(Sag.of(extended, risen, settled))
        : Optional.empty();
  }

  /** The sheet's window where there is one and it is a bike's; otherwise the trade's. */
  private static SagWindow window(Inputs inputs, Optional<Range> wished, SagWindow trade) {
    Optional<SagWindow> own =
        wished
            .filter(range -> range.least().si() >= 0 && range.most().si() <= 0.4)
            .map(range -> new SagWindow(range.least().si(), range.most().si()));
    if (own.isEmpty()) {
      inputs.assume(Assumed.SAG_WINDOW_OF_THE_TRADE);
    }
    return own.orElse(trade);
  }

  static Optional<Setting> one(Sheet sheet, Role role) {
    return sheet.settings(role).stream().findFirst();
  }

  private static rutbook.physics.MotionRatio ratio(MotionRatio written) {
    return new rutbook.physics.MotionRatio(
        written.value().doubleValue(),
        written.convention() == RatioConvention.SPRING_OVER_WHEEL
            ? rutbook.physics.MotionRatio.Convention.SPRING_OVER_WHEEL
            : rutbook.physics.MotionRatio.Convention.WHEEL_OVER_SPRING);
  }

  private static Spread spread(SagWorksheet.Range range) {
    return new Spread(rate(range.least()), rate(range.middle()), rate(range.most()));
  }

  private static Amount rate(double newtonsPerMetre) {
    return Si.amount(newtonsPerMetre, SpringRate.NEWTON_PER_MILLIMETRE, 2);
  }

  private static Amount mm(double metres) {
    return Si.amount(metres, Length.MILLIMETRE, 1);
  }
}
