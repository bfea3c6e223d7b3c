package rutbook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rutbook.notebook.Bench.mm;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Geometry;
import rutbook.notebook.Head;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.Parts;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.physics.SpringVerdict;
import rutbook.physics.ViscosityGrade;
import rutbook.physics.ViscosityIndex;
import rutbook.units.Amount;
import rutbook.units.Angle;
import rutbook.units.KinematicViscosity;
import rutbook.units.Mass;
import rutbook.units.SpringRate;
import rutbook.units.TurnUnit;

class RearFiguresTest {
  private static final Optional<Amount> WEIGHT = Optional.of(Amount.of(90, Mass.KILOGRAM));

  private static Entry.SagMeasured sag(String race, String free) {
    return new Entry.SagMeasured(
        Head.of(new EntryId("sag"), Bench.BIKE, Bench.SPRING, 1),
        End.REAR,
        Optional.of(mm(race)),
        Optional.of(mm(free)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static SagFigures figures(String race, String free) {
    return SagFigures.of(Bench.sheet(), Bench.setup(), sag(race, free), WEIGHT)
        .found()
        .orElseThrow();
  }

  @Test
  void sagsInsideBothWindowsKeepSpringAndPreload() {
    SagFigures right = figures("104", "33");
    assertThat(right.verdict()).contains(SpringVerdict.RIGHT);
    assertThat(right.wanted().rate().middle())
        .isEqualTo(Amount.of("54", SpringRate.NEWTON_PER_MILLIMETRE));
    assertThat(right.wanted().preload())
        .isEqualTo(new SagFigures.Fitting(mm("7"), Optional.of(Amount.of(0, TurnUnit.TURN)), true));
    assertThat(right.wanted().share()).isCloseTo(0, within(1e-12));
  }

  /** K'/K = (105 − 15)/(105 − 28), worked by hand; the sheet's free window begins at 28 mm. */
  @Test
  void tooLittleFreeSagAsksForAStifferSpringUpToTheNearestEdge() {
    SagFigures soft = figures("105", "15");
    assertThat(soft.verdict()).contains(SpringVerdict.TOO_SOFT);
    assertThat(soft.target().free()).isEqualTo(mm("28"));
    assertThat(soft.wanted().share()).isCloseTo(90.0 / 77 - 1, within(1e-12));
    assertThat(soft.wanted().inside()).isFalse();
    assertThat(soft.wanted().held())
        .as("what may be suggested ends at the sheet's limit")
        .contains(Amount.of("63", SpringRate.NEWTON_PER_MILLIMETRE));
    assertThat(soft.springs())
        .extracting(SagFigures.AtHand::rate)
        .containsExactly(
            Amount.of("54", SpringRate.NEWTON_PER_MILLIMETRE),
            Amount.of("57", SpringRate.NEWTON_PER_MILLIMETRE));
  }

  @Test
  void sagsLessThanTenMillimetresApartAreNoFigure() {
    assertThat(SagFigures.of(Bench.sheet(), Bench.setup(), sag("40", "35"), WEIGHT).needs())
        .extracting(Need::quantity)
        .contains(Quantity.SAG_DIFFERENCE);
    assertThat(
            SagFigures.of(Bench.sheet(), Bench.setup(), sag("104", "33"), Optional.empty()).needs())
        .containsExactly(Need.of(Quantity.RIDER_WEIGHT, Need.Why.NOT_NOTED));
  }

  private static Sheet withGeometry() {
    Geometry geometry =
        new Geometry(
            Optional.of(Amount.of(27, Angle.DEGREE)),
            Optional.of(mm("52")),
            Optional.of(mm("343")),
            Optional.of(mm("335")),
            Optional.of(mm("1480")));
    Parts parts = Bench.sheet().parts();
    return Bench.sheet().withParts(new Parts(parts.fork(), parts.shock(), geometry, parts.sag()));
  }

  /** Row c.pitch.f10_r0 of the outside checks: scipy's brentq on the same rigid plane. */
  @Test
  void tenMillimetresOfTubeTurnTheBikeAsTheOutsideCheckSays() {
    Sheet sheet = withGeometry();
    SteeringFigures after = SteeringFigures.after(sheet, mm("10"), mm("0")).found().orElseThrow();
    assertThat(after.rake()).isEqualTo(Amount.of("26.65", Angle.DEGREE));
    assertThat(after.trail()).isEqualTo(mm("114.0"));
    assertThat(after.wheelbase()).isEqualTo(mm("1475.5"));
    assertThat(SteeringFigures.of(Bench.sheet()).needs()).hasSize(5);
  }

  private static Oil oil(String id, String kv40, String kv100) {
    return new Oil(
        new OilId(id),
        id,
        Optional.of(Amount.of(kv40, KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND)),
        Optional.of(Amount.of(kv100, KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND)));
  }

  @Test
  void thickerOilHasARatioAboveOneAndABlendIsAnEstimateBetweenItsParts() {
    Oil thin = oil("thin", "16", "4");
    Oil thick = oil("thick", "32", "6.5");
    Figure<OilFigures.Ratio> ratio = OilFigures.ratio(thin, thick, Optional.empty());
    assertThat(ratio.found().orElseThrow().ratio()).isBetween(1.5, 2.0);
    assertThat(ratio.assumed()).containsExactly(Assumed.OIL_TEMPERATURE);
    assertThat(OilFigures.blend(thin, thick, 0.5).assumed()).containsExactly(Assumed.BLEND_RULE);
    assertThat(OilFigures.blend(thin, thick, 0.5).found().orElseThrow().viscosityAt(313.15))
        .isBetween(16.0, 24.0);
    assertThat(OilFigures.blend(thin, thick, Double.NaN).found()).isEmpty();
  }

  /**
   * Numbers of row a.vi.A of the outside checks (ASTM D2270 section 5): an index of 92; ISO 3448
   * has VG 68 from 61.2 to 74.8 mm²/s.
   */
  @Test
  void anOilHasItsGradeAndItsIndexByTheStandards() {
    OilStanding standing = OilStanding.of(oil("gear", "73.30", "8.86"), Optional.empty());
    assertThat(standing.grade()).contains(ViscosityGrade.VG68);
    assertThat(((ViscosityIndex) standing.index().found().orElseThrow()).whole()).isEqualTo(92);
    assertThat(standing.index().estimate()).isFalse();
    assertThat(standing.at().assumed()).containsExactly(Assumed.OIL_TEMPERATURE);
    OilStanding between = OilStanding.of(oil("fork", "18.6", "4.4"), Optional.empty());
    assertThat(between.grade()).as("in the gap between 16.5 and 19.8").isEmpty();
    assertThat(between.index().assumed()).contains(Assumed.INDEX_BETWEEN_ROWS);
    OilStanding unknown =
        OilStanding.of(
            new Oil(new OilId("bare"), "bare", Optional.empty(), Optional.empty()),
            Optional.empty());
    assertThat(unknown.index().needs()).hasSize(2);
    assertThat(unknown.grade()).isEmpty();
  }

  /** Pitch 1.5 mm over a motion ratio of 0.36: a turn is 4.2 mm of race sag, by hand. */
  @Test
  void preloadIsSaidInTurnsOfTheCollar() {
    SagFigures low = figures("112", "36");
    SagFigures.AtHand today = low.springs().get(0);
    assertThat(low.collar()).contains(new SagFigures.Collar(mm("1.5"), mm("4.2")));
    assertThat(today.fitted()).isTrue();
    assertThat(today.preload().preload())
        .as("4 mm less race sag is 4 × 0.36 mm more preload")
        .isEqualTo(mm("8.4"));
    assertThat(today.preload().turns()).contains(Amount.of("1.0", TurnUnit.TURN));
    assertThat(today.offered()).isTrue();
  }

  @Test
  void everyHeightThatTheSheetAllowsHasItsSteering() {
    SteeringSweep sweep =
        SteeringSweep.of(withGeometry(), Bench.setup(), mm("0")).found().orElseThrow();
    assertThat(sweep.rows()).hasSize(11);
    assertThat(sweep.rows().get(5).tube()).isEqualTo(sweep.present());
    assertThat(sweep.rows().get(5).steering().rake()).isEqualTo(Amount.of("27.00", Angle.DEGREE));
    assertThat(sweep.rows())
        .extracting(row -> row.steering().trail())
        .isSortedAccordingTo((a, b) -> b.compareQuantity(a));
    assertThat(SteeringSweep.of(Bench.sheet(), Bench.setup(), mm("0")).needs()).hasSize(5);
    assertThat(SteeringSweep.of(withGeometry(), Setup.EMPTY, mm("0")).needs())
        .containsExactly(Need.of(Quantity.TUBE_ABOVE_CLAMP, Need.Why.NOT_NOTED));
  }
}
