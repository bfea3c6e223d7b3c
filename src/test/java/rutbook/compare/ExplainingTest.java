package rutbook.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.figures.GasFigures;
import rutbook.figures.OilFigures;
import rutbook.notebook.Bench;
import rutbook.notebook.Conditions;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Geometry;
import rutbook.notebook.Ground;
import rutbook.notebook.Notebook;
import rutbook.notebook.Oil;
import rutbook.notebook.OilId;
import rutbook.notebook.Parts;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Section;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Shelf;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.units.Amount;
import rutbook.units.Angle;
import rutbook.units.KinematicViscosity;
import rutbook.units.Length;
import rutbook.units.Temperature;

/**
 * What sag and conditions explain. Geometry and its outcome are those of the check value
 * c.pitch.f0_r10 (exact root of the rigid plane, computed), viscosities of a.d341.15_3.3 (computed
 * with R 4.2.2), pressures of b.atm.pub1524.0 (published table of the standard atmosphere).
 */
class ExplainingTest {
  private static final Shelf SHELF = Bench.notebook().shelf();
  private static final Timeline TIMELINE = Timeline.of(Bench.notebook(), Bench.BIKE);

  private static Sheet sheet() {
    Geometry geometry =
        new Geometry(
            Optional.of(Amount.of("27", Angle.DEGREE)),
            Optional.of(Bench.mm("52")),
            Optional.of(Bench.mm("343")),
            Optional.of(Bench.mm("335")),
            Optional.of(Bench.mm("1480")));
    Sheet bare = Bench.sheet();
    Parts parts = bare.parts();
    return bare.withParts(new Parts(parts.fork(), parts.shock(), geometry, parts.sag()));
  }

  private static Subject subject(Setup setup, String rearSag, Conditions conditions, Feel... feel) {
    SagSeen sag =
        new SagSeen(
            Optional.of(Bench.mm("70")),
            Optional.empty(),
            Optional.of(Bench.mm(rearSag)),
            Optional.empty());
    return new Subject(
        new Choice.Now(),
        Bench.SPRING,
        sheet(),
        setup,
        sag,
        conditions,
        List.of(feel),
        OptionalInt.empty());
  }

  private static Subject subject(Setup setup, String rearSag) {
    return subject(setup, rearSag, Conditions.NOT_NOTED);
  }

  private static Conditions ground(Ground ground, int roughness) {
    return new Conditions(
        Optional.of(ground),
        Optional.empty(),
        OptionalInt.of(roughness),
        Optional.empty(),
        Set.of());
  }

  private static List<Explanation> explained(Subject from, Subject to) {
    return Explaining.of(SHELF, TIMELINE, Comparison.of(from, to));
  }

  @Test
  void alikeSidesExplainNothing() {
    assertThat(explained(subject(Bench.setup(), "100"), subject(Bench.setup(), "100"))).isEmpty();
  }

  @Test
  void moreRearSagLetsTheRearDownAndSlackensTheRake() {
    Setup preload = Bench.setup().with(Placed.set(Bench.PRELOAD, Reading.of(Bench.mm("4"))));
    List<Explanation> found = explained(subject(Bench.setup(), "100"), subject(preload, "110"));
    assertThat(found).hasSize(2);
    assertThat(found.get(0)).isEqualTo(new Explanation.RidesAt(End.REAR, Bench.mm("10"), true));
    Explanation.Steers steers = (Explanation.Steers) found.get(1);
    assertThat(steers.rake().doubleIn(Angle.DEGREE)).isCloseTo(0.3871, within(0.006));
    assertThat(steers.trail().doubleIn(Length.MILLIMETRE))
        .isCloseTo(119.1327 - 116.406265, within(0.06));
    assertThat(steers.frontLower().value().signum()).isZero();
  }

  @Test
  void sagThatMovedWithSpringAndPreloadAlikeIsNotOfTheSettings() {
    assertThat(explained(subject(Bench.setup(), "100"), subject(Bench.setup(), "106")))
        .contains(new Explanation.NotBySetting(Bench.mm("6")));
    Setup preload = Bench.setup().with(Placed.set(Bench.PRELOAD, Reading.of(Bench.mm("4"))));
    assertThat(explained(subject(Bench.setup(), "100"), subject(preload, "106")))
        .noneMatch(Explanation.NotBySetting.class::isInstance);
  }

  @Test
  void fromWhatATapeMayBeOutNothingFollows() {
    assertThat(explained(subject(Bench.setup(), "100"), subject(Bench.setup(), "102")))
        .containsExactly(new Explanation.RidesAt(End.REAR, Bench.mm("2"), false));
  }

  @Test
  void otherGroundIsSaidOnlyWhereSomethingWasFelt() {
    Feel feel = Feel.of(End.REAR, Section.WHOOPS, Symptom.KICKS, 2);
    Subject loam = subject(Bench.setup(), "100", ground(Ground.LOAM, 2), feel);
    Subject sand = subject(Bench.setup(), "100", ground(Ground.SAND, 4));
    assertThat(explained(loam, sand))
        .containsExactly(new Explanation.OtherGround(Ground.LOAM, Ground.SAND, OptionalInt.of(2)));
    Subject rough = subject(Bench.setup(), "100", ground(Ground.LOAM, 1));
    assertThat(explained(loam, rough)).containsExactly(new Explanation.Rougher(-1));
    Subject unfelt = subject(Bench.setup(), "100", ground(Ground.LOAM, 2));
    assertThat(explained(unfelt, sand)).isEmpty();
  }

  private static Amount celsius(long degrees) {
    return Amount.of(degrees, Temperature.CELSIUS);
  }

  private static Oil oil() {
    return new Oil(
        new OilId("o"),
        "Oil",
        Optional.of(Amount.of("15", KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND)),
        Optional.of(Amount.of("3.3", KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND)));
  }

  /** From the 50 °C that is taken to 20 and to 80: one over the other is that of the checks. */
  @Test
  void colderAirThickensTheOilAsMuchAsTheOutsideValuesSay() {
    double cold =
        OilFigures.inAir(oil(), oil(), celsius(25), celsius(-5)).found().orElseThrow().ratio();
    double warm =
        OilFigures.inAir(oil(), oil(), celsius(5), celsius(35)).found().orElseThrow().ratio();
    assertThat(cold).isGreaterThan(1);
    assertThat(warm).isLessThan(1);
    assertThat(cold / warm).isCloseTo(34.658432 / 4.88433, within(1e-5));
    assertThat(OilFigures.inAir(oil(), oil(), celsius(0), celsius(90)).needs()).isNotEmpty();
  }

  @Test
  void airBledHigherUpPushesLess() {
    double share =
        GasFigures.bledAt(Bench.mm("0"), Amount.of("1524", Length.METRE)).found().orElseThrow();
    assertThat(share).isCloseTo(84322.9 / 101325 - 1, within(1e-3));
  }

  /** A season has oils, altitudes and air: what is noted of both sides is said. */
  @Test
  void theSeasonsOilInColderAirIsThicker() {
    Notebook season = Samples.season();
    Timeline timeline = Timeline.of(season, season.bikes().get(0).id());
    Subject best = Subject.best(timeline, season.shelf().tracks().get(0)).orElseThrow();
    List<Explanation> found =
        Explaining.of(season.shelf(), timeline, Comparison.of(inAir(best, 25), inAir(best, 10)));
    assertThat(found).hasSize(1);
    Explanation.OilInAir oil = (Explanation.OilInAir) found.get(0);
    assertThat(oil.share()).isBetween(0.2, 1.0);
    assertThat(oil.air().value().signum()).isNegative();
    assertThat(
            Explaining.of(
                season.shelf(), timeline, Comparison.of(inAir(best, 25), inAir(best, 27))))
        .isEmpty();
  }

  private static Subject inAir(Subject subject, long degrees) {
    Conditions noted = subject.conditions();
    Conditions air =
        new Conditions(
            noted.ground(),
            noted.moisture(),
            noted.roughness(),
            Optional.of(celsius(degrees)),
            noted.ready());
    return new Subject(
        subject.choice(),
        subject.day(),
        subject.sheet(),
        subject.setup(),
        subject.sag(),
        air,
        subject.feel(),
        subject.trust());
  }
}
