package rutbook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.AirLeg;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.ChamberVolume;
import rutbook.notebook.ForkKind;
import rutbook.notebook.ForkParts;
import rutbook.notebook.Measure;
import rutbook.notebook.Parts;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.WhyUnknown;
import rutbook.physics.ForkChange;
import rutbook.units.Amount;
import rutbook.units.Pressure;

class ForkFiguresTest {
  private static final Sheet SHEET = Bench.sheet();
  private static final Riding RIDING = new Riding(Optional.of(mm("70")), Optional.of(mm("0")));

  private static Sheet with(ForkParts fork) {
    Parts parts = SHEET.parts();
    return SHEET.withParts(new Parts(fork, parts.shock(), parts.geometry(), parts.sag()));
  }

  private static Sheet chamber(Measure measure, Range limits, Optional<ChamberVolume> volume) {
    Chamber inner = Bench.chambers().get(0);
    return SHEET.withChambers(
        List.of(
            inner,
            new Chamber(
                Bench.OUTER, "Outer", Carrier.PAIR, measure, limits, Optional.empty(), volume)));
  }

  private static Sheet chamberOf(String millilitres, boolean measured) {
    return chamber(
        Measure.VOLUME,
        new Range(ml("300"), ml("380")),
        Optional.of(new ChamberVolume(ml(millilitres), measured)));
  }

  private static Setup filled(Reading reading) {
    return Bench.setup().with(Placed.found(Bench.FORK_OIL, reading));
  }

  @Test
  void everyFillHasItsCurveAndMoreOilHoldsMore() {
    ForkFigures figures = ForkFigures.of(SHEET, Bench.setup(), RIDING);
    assertThat(figures.inOrder())
        .extracting(ForkFigures.FillCurve::kind)
        .containsExactly(FillKind.values());
    assertThat(reserve(figures, FillKind.LEAST)).isLessThan(reserve(figures, FillKind.NOMINAL));
    assertThat(reserve(figures, FillKind.NOMINAL))
        .isEqualTo(reserve(figures, FillKind.PRESENT))
        .isLessThan(reserve(figures, FillKind.MOST));
    assertThat(figures.present().drawn().found().orElseThrow().points())
        .hasSize(ForkFigures.POINTS);
  }

  private static double reserve(ForkFigures figures, FillKind kind) {
    return figures.curves().get(kind).drawn().found().orElseThrow().whole().line();
  }

  /** The force is the two coils and twice (p − p0) A, worked by hand: p = p0 (V0/V)^1.3. */
  @Test
  void theEndForceIsTheOneWorkedByHand() {
    Sheet sheet = chamberOf("995", true);
    double area = Math.PI / 4 * (0.048 * 0.048 - 0.0125 * 0.0125);
    double start = 995e-6 - 335e-6;
    double air = 101325 * (Math.pow(start / (start - area * 0.3), 1.3) - 1) * area;
    double force =
        ForkFigures.of(sheet, Bench.setup(), RIDING)
            .present()
            .drawn()
            .found()
            .orElseThrow()
            .curve()
            .force(0.3, 1.3);
    assertThat(force).isCloseTo(2 * (4600 * 0.3 + air), within(1e-6));
  }

  @Test
  void anUnknownChamberIsReckonedAndSaysSo() {
    ForkFigures figures = ForkFigures.of(SHEET, Bench.setup(), RIDING);
    assertThat(figures.present().drawn().assumed())
        .contains(Assumed.CHAMBER_FROM_GREATEST_FILL, Assumed.FORK_PRELOAD_NONE);
    assertThat(figures.legs())
        .extracting(LegFigures::chamberFrom)
        .containsOnly(LegFigures.ChamberFrom.GREATEST_FILL);
    ForkFigures measured = ForkFigures.of(chamberOf("995", true), Bench.setup(), RIDING);
    assertThat(measured.present().drawn().assumed()).containsExactly(Assumed.FORK_PRELOAD_NONE);
    assertThat(measured.legs().get(0).chamber()).contains(ml("995"));
  }

  @Test
  void tooLittleRoomIsRefusedWhenMeasuredAndAWarningWhenEstimated() {
    Reading full = Reading.bothLegs(ml("380"));
    assertThat(FillRoom.planned(chamberOf("890", true), Bench.FORK_OIL, full))
        .hasSize(2)
        .allMatch(room -> room.verdict() == FillRoom.Verdict.REFUSED)
        .allMatch(room -> room.compression().isPresent() || room.roomForOil().si() < 0);
    assertThat(FillRoom.planned(chamberOf("890", false), Bench.FORK_OIL, full))
        .hasSize(2)
        .allMatch(room -> room.verdict() == FillRoom.Verdict.WARNED);
    assertThat(FillRoom.planned(chamberOf("995", true), Bench.FORK_OIL, full))
        .allMatch(room -> room.verdict() == FillRoom.Verdict.FREE);
  }

  @Test
  void aLockedLegHasNoCurveAndSaysWhich() {
    ForkFigures figures =
        ForkFigures.of(chamberOf("850", true), filled(Reading.of(ml("320"), ml("379"))), RIDING);
    assertThat(figures.present().drawn().needs())
        .containsExactly(
            new Need(
                Quantity.AIR_AT_FULL_STROKE,
                Optional.of(rutbook.notebook.Side.RIGHT),
                Need.Why.NONE_LEFT));
  }

  @Test
  void anUnknownFillIsNeeded() {
    ForkFigures figures =
        ForkFigures.of(SHEET, filled(Reading.unknown(Carrier.PAIR, WhyUnknown.STRIPPED)), RIDING);
    assertThat(figures.present().drawn().needs())
        .extracting(Need::quantity)
        .containsOnly(Quantity.FORK_FILL);
    assertThat(figures.curves().get(FillKind.MOST).drawn().found()).isPresent();
  }

  /**
   * The design's figures: 5 mL are under 1 % of the total energy and 3–4.5 % of the end air force.
   * By hand: 506 mL of stroke leave 139 of 645 mL and 144 of 650 mL, so the end air force goes from
   * 6.36 to 6.10 of the outside pressure, and the air takes 76.2 J and 74.3 J of 283 J a leg.
   */
  @Test
  void fiveMillilitresChangeTheSharesThatTheDesignNames() {
    Sheet sheet = chamberOf("995", true);
    ForkChange change =
        ForkFigures.change(
                sheet,
                filled(Reading.bothLegs(ml("350"))),
                filled(Reading.bothLegs(ml("345"))),
                RIDING)
            .found()
            .orElseThrow();
    assertThat(change.endAirForce().orElseThrow()).isCloseTo(-0.0408, within(0.0005));
    assertThat(change.reserve().orElseThrow()).isCloseTo(-0.0066, within(0.0002));
  }

  @Test
  void theFrontCarriesWhatItsSagSays() {
    ForkFigures figures = ForkFigures.of(SHEET, Bench.setup(), RIDING);
    assertThat(figures.frontMass().found().orElseThrow()).isBetween(60.0, 140.0);
    assertThat(figures.frontMass().assumed()).contains(Assumed.RAKE_TYPICAL);
    Figure<Amount> none =
        ForkFigures.of(SHEET, Bench.setup(), Riding.NOT_NOTED)
            .present()
            .drawn()
            .found()
            .orElseThrow()
            .whole()
            .dropHeight();
    assertThat(none.needs()).extracting(Need::quantity).contains(Quantity.FRONT_SAG);
  }

  @Test
  void anAirForkIsDrawnOnlyWithItsNegativeChamber() {
    Range pressures = new Range(Amount.of("9", Pressure.BAR), Amount.of("12", Pressure.BAR));
    ForkParts without =
        new ForkParts(
            ForkKind.AIR,
            Optional.of(mm("300")),
            Optional.of(mm("48")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "");
    ForkParts with =
        new ForkParts(
            ForkKind.AIR,
            Optional.of(mm("300")),
            Optional.of(mm("48")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(new AirLeg(mm("34"), ml("420"), ml("60"))),
            "");
    rutbook.notebook.SettingId id = new rutbook.notebook.SettingId("fork-air");
    Sheet sheet =
        with(without)
            .withSettings(
                List.of(
                    Bench.measured(id, "Fork air", Role.FORK_AIR, Carrier.LEFT, pressures, "0.1")));
    Setup setup = new Setup(List.of(Placed.set(id, Reading.of(Amount.of("10", Pressure.BAR)))));
    assertThat(ForkFigures.of(sheet, setup, RIDING).present().drawn().needs())
        .containsExactly(Need.of(Quantity.NEGATIVE_CHAMBER, Need.Why.NOT_ON_THE_SHEET));
    Parts parts = sheet.parts();
    ForkFigures drawn =
        ForkFigures.of(
            sheet.withParts(new Parts(with, parts.shock(), parts.geometry(), parts.sag())),
            setup,
            RIDING);
    ForkFigures.Drawn present = drawn.present().drawn().found().orElseThrow();
    assertThat(present.curve().force(0, 1.3)).isCloseTo(0, within(1e-9));
    assertThat(present.curve().legs()).hasSize(2);
    assertThat(present.curve().legs().get(1).air()).isEmpty();
  }

  /** A fork without cartridges whose fill is set by its level, 80 to 130 mm. */
  static Sheet openBath(String bore, Optional<Amount> steel) {
    ForkParts fork =
        new ForkParts(
            ForkKind.OPEN_BATH,
            Optional.of(mm("300")),
            Optional.of(mm("48")),
            Optional.of(mm(bore)),
            Optional.empty(),
            steel,
            Optional.empty(),
            "");
    return with(fork)
        .withSettings(List.of())
        .withChambers(
            List.of(
                new Chamber(
                    Bench.OUTER,
                    "Leg",
                    Carrier.PAIR,
                    Measure.LEVEL,
                    new Range(mm("80"), mm("130")),
                    Optional.of(mm("105")),
                    Optional.empty())))
        .withSettings(
            List.of(
                SHEET.settings().get(0),
                Bench.fill(Bench.FORK_OIL, "Oil level", Role.FORK_OIL, Bench.OUTER, mm("5"))));
  }

  @Test
  void anOpenBathByLevelSaysWhenTheSpringsSteelIsLeftOut() {
    Sheet sheet = openBath("43", Optional.empty());
    ForkFigures figures = ForkFigures.of(sheet, filled(Reading.bothLegs(mm("105"))), RIDING);
    assertThat(figures.present().drawn().assumed()).contains(Assumed.SPRING_STEEL_LEFT_OUT);
    assertThat(figures.curves().get(FillKind.LEAST).fills()).containsExactly(mm("130"));
    assertThat(reserve(figures, FillKind.LEAST)).isLessThan(reserve(figures, FillKind.MOST));
  }
}
