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
import rutbook.notebook.Sheet;
import rutbook.physics.SpringVerdict;
import rutbook.units.Amount;
import rutbook.units.Angle;
import rutbook.units.KinematicViscosity;
import rutbook.units.Mass;
import rutbook.units.SpringRate;

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
    assertThat(right.spring().middle())
        .isEqualTo(Amount.of("54", SpringRate.NEWTON_PER_MILLIMETRE));
    assertThat(right.preload()).isEqualTo(new SagFigures.Fitting(mm("7"), true));
    assertThat(right.share()).isCloseTo(0, within(1e-12));
  }

  /** K'/K = (105 − 15)/(105 − 28), worked by hand; the sheet's free window begins at 28 mm. */
  @Test
  void tooLittleFreeSagAsksForAStifferSpringUpToTheNearestEdge() {
    SagFigures soft = figures("105", "15");
    assertThat(soft.verdict()).contains(SpringVerdict.TOO_SOFT);
    assertThat(soft.targetFree()).isEqualTo(mm("28"));
    assertThat(soft.share()).isCloseTo(90.0 / 77 - 1, within(1e-12));
    assertThat(soft.springInside()).isFalse();
    assertThat(soft.atHand())
        .extracting(SagFigures.AtHand::rate)
        .containsExactly(Amount.of("57", SpringRate.NEWTON_PER_MILLIMETRE));
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

  /** Row c.pitch.f10_r0 of the outside checks: scipy's brentq on the same rigid plane. */
  @Test
  void tenMillimetresOfTubeTurnTheBikeAsTheOutsideCheckSays() {
    Geometry geometry =
        new Geometry(
            Optional.of(Amount.of(27, Angle.DEGREE)),
            Optional.of(mm("52")),
            Optional.of(mm("343")),
            Optional.of(mm("335")),
            Optional.of(mm("1480")));
    Parts parts = Bench.sheet().parts();
    Sheet sheet =
        Bench.sheet().withParts(new Parts(parts.fork(), parts.shock(), geometry, parts.sag()));
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
}
