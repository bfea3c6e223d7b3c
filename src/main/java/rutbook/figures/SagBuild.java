package rutbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rutbook.figures.Inputs.Believable;
import rutbook.figures.SagFigures.AtHand;
import rutbook.figures.SagFigures.Collar;
import rutbook.figures.SagFigures.Fitting;
import rutbook.figures.SagFigures.Spread;
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
import rutbook.physics.Preload;
import rutbook.physics.Sag;
import rutbook.physics.SagWindow;
import rutbook.physics.SagWorksheet;
import rutbook.physics.SpringVerdict;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Length;
import rutbook.units.SpringRate;
import rutbook.units.TurnUnit;

/** Reads the rear end from a sheet, a setup and a measurement, and works the sag worksheet. */
final class SagBuild {
  static final Believable SAG = new Believable(Dimension.LENGTH, 0, 0.4);
  private static final Believable WEIGHT = new Believable(Dimension.MASS, 20, 300);
  static final Believable RATE = new Believable(Dimension.SPRING_RATE, 5e3, 5e5);
  static final Believable PRELOAD = new Believable(Dimension.LENGTH, 0, 0.1);
  private static final Believable PITCH = new Believable(Dimension.LENGTH, 1e-4, 1e-2);
  private static final double GRAVITY = 9.80665;

  private SagBuild() {}

  static Figure<SagFigures> figures(
      Sheet sheet, Setup setup, Entry.SagMeasured measured, Optional<Amount> weight) {
    Inputs inputs = new Inputs();
    Optional<Sag> lengths = measured.lengths().flatMap(SagBuild::byLengths);
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
                    mass * GRAVITY * SagFigures.REAR_SHARE,
                    race,
                    free,
                    rate,
                    preload,
                    ratio(ratio.get())),
                raceWindow,
                freeWindow,
                lengths.map(sag -> mm(sag.friction()))));
  }

  private static SagFigures reckoned(
      Sheet sheet,
      SagWorksheet worksheet,
      SagWindow raceWindow,
      SagWindow freeWindow,
      Optional<Amount> friction) {
    double race = raceWindow.nearest(worksheet.raceSag());
    double free = freeWindow.nearest(worksheet.freeSag());
    SagWorksheet.Plan plan = worksheet.meeting(race, free);
    return new SagFigures(
        new SagFigures.Measured(mm(worksheet.raceSag()), mm(worksheet.freeSag()), friction),
        spread(worksheet.wheelRate()),
        rate(worksheet.wheelRateOfSpring()),
        SpringVerdict.of(worksheet.raceSag(), raceWindow, worksheet.freeSag(), freeWindow),
        new SagFigures.Target(mm(race), mm(free)),
        wanted(sheet, worksheet, plan),
        springs(sheet, worksheet, plan.rate().middle(), race),
        pitch(sheet)
            .map(
                pitch ->
                    new Collar(
                        sheet.parts().shock().collarPitch().orElseThrow(),
                        mm(Preload.sagPerTurn(pitch, worksheet.ratio())))));
  }

  private static SagFigures.Wanted wanted(
      Sheet sheet, SagWorksheet worksheet, SagWorksheet.Plan plan) {
    Amount spring = rate(plan.rate().middle());
    return new SagFigures.Wanted(
        spread(plan.rate()),
        plan.share(),
        fitting(sheet, worksheet, plan.preload()),
        limits(sheet, Role.SHOCK_SPRING, spring).map(limits -> limits.hold(spring)),
        inside(sheet, Role.SHOCK_SPRING, spring));
  }

  /** Today's spring first, then the nearest of the rider's list either side of the wanted one. */
  private static List<AtHand> springs(
      Sheet sheet, SagWorksheet worksheet, double wanted, double race) {
    List<Double> rates =
        sheet.parts().shock().springsAtHand().stream()
            .map(Amount::si)
            .filter(rate -> rate >= RATE.least() && rate <= RATE.most())
            .toList();
    SagWorksheet.Neighbours nearest = SagWorksheet.nearest(wanted, rates);
    List<AtHand> springs = new ArrayList<>();
    springs.add(atHand(sheet, worksheet, worksheet.springRate(), race));
    Stream.of(nearest.softer(), nearest.stiffer())
        .flatMap(Optional::stream)
        .distinct()
        .filter(rate -> Math.abs(rate - worksheet.springRate()) > 1e-6)
        .forEach(rate -> springs.add(atHand(sheet, worksheet, rate, race)));
    return springs;
  }

  private static AtHand atHand(Sheet sheet, SagWorksheet worksheet, double spring, double race) {
    SagWorksheet.Fitted fitted = worksheet.with(spring, race);
    return new AtHand(
        rate(fitted.rate()),
        spring == worksheet.springRate(),
        fitting(sheet, worksheet, fitted.preload()),
        mm(fitted.freeSag()),
        inside(sheet, Role.SHOCK_SPRING, rate(fitted.rate())));
  }

  private static Fitting fitting(Sheet sheet, SagWorksheet worksheet, double preload) {
    Amount amount = mm(preload);
    return new Fitting(
        amount,
        pitch(sheet)
            .map(pitch -> Si.amount((preload - worksheet.preload()) / pitch, TurnUnit.TURN, 1)),
        amount.value().signum() >= 0 && inside(sheet, Role.SHOCK_PRELOAD, amount));
  }

  private static Optional<Double> pitch(Sheet sheet) {
    return sheet
        .parts()
        .shock()
        .collarPitch()
        .map(Amount::si)
        .filter(pitch -> pitch >= PITCH.least() && pitch <= PITCH.most());
  }

  private static boolean inside(Sheet sheet, Role role, Amount amount) {
    return limits(sheet, role, amount).map(limits -> limits.contains(amount)).orElse(false);
  }

  private static Optional<Range> limits(Sheet sheet, Role role, Amount amount) {
    return one(sheet, role)
        .map(sheet::limits)
        .filter(limits -> limits.least().dimension() == amount.dimension());
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
