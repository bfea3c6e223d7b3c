package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Datum;
import rutbook.notebook.Entry;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Parts;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.SagWindows;
import rutbook.notebook.Scale;
import rutbook.notebook.Scope;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.StepId;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Length;
import rutbook.units.SpringRate;

/** Plans of bikes that are made otherwise; all of it common practice, no source. */
class PlanShapesTest {
  private static final SettingId FORK_PRELOAD = new SettingId("fork-preload");
  private static final SettingId AXLE = new SettingId("axle");
  private static final SettingId OTHER = new SettingId("other");

  private static List<String> ids(Sheet sheet, Setup now, Scope scope, Renewed... renewed) {
    return Jobs.ids(Jobs.plan(Jobs.from(sheet, Bench.setup(), now, scope, renewed)));
  }

  private static Step step(Plan plan, String id) {
    return plan.step(new StepId(id)).orElseThrow();
  }

  private static Sheet with(Sheet sheet, Setting... more) {
    List<Setting> settings = new ArrayList<>(sheet.settings());
    settings.addAll(List.of(more));
    return sheet.withSettings(settings);
  }

  private static Setting millimetres(SettingId id, Role role) {
    Carrier carrier = role == Role.FORK_PRELOAD ? Carrier.PAIR : Carrier.SINGLE;
    return Bench.measured(id, id.text(), role, carrier, new Range(mm("0"), mm("20")), "1");
  }

  @Test
  void valvingIsFittedInEveryLegThatDamps() {
    assertThat(ids(Bench.sheet(), Bench.setup(), Scope.FORK, Renewed.VALVING))
        .containsSubsequence("drain:left", "fit-valving:left", "cartridge-fill:cartridge-oil:left")
        .contains("fit-valving:right", "new-sheet");
    assertThat(ids(Bench.sheet(), Bench.setup(), Scope.FORK, Renewed.OIL))
        .noneMatch(id -> id.startsWith("fit-valving"));
    Setting compression = Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();
    Setting rebound = Bench.sheet().setting(Bench.FORK_REBOUND).orElseThrow();
    Sheet right =
        Jobs.replacing(
            Jobs.replacing(
                Jobs.without(Jobs.withFork(Bench.sheet(), ForkKind.OPEN_BATH), Bench.CARTRIDGE_OIL),
                Jobs.in(compression, Carrier.RIGHT)),
            Jobs.in(rebound, Carrier.RIGHT));
    assertThat(ids(right, Setup.EMPTY, Scope.FORK, Renewed.VALVING))
        .as("the left leg holds the spring alone")
        .contains("fit-valving:right", "pump-cartridge:right", "pour:right")
        .doesNotContain("fit-valving:left", "pump-cartridge:left", "pour:left");
    Sheet bare = Jobs.without(right, Bench.FORK_COMPRESSION, Bench.FORK_REBOUND);
    assertThat(ids(bare, Setup.EMPTY, Scope.FORK, Renewed.VALVING))
        .as("a fork without adjusters damps in both legs")
        .contains("fit-valving:left", "fit-valving:right", "pump-cartridge:left");
  }

  @Test
  void oilIsPouredWhereNoStepMeasuresIt() {
    Sheet noCartridge = Jobs.without(Bench.sheet(), Bench.CARTRIDGE_OIL);
    assertThat(ids(noCartridge, Setup.EMPTY, Scope.FORK, Renewed.OIL))
        .as("a pressurised cartridge whose fill the sheet does not have")
        .containsSubsequence("pour:left", "pump-cartridge:left", "rod-returns:left");
    assertThat(ids(noCartridge, Setup.EMPTY, Scope.FORK, Renewed.SEALS))
        .as("closed, and the outer chamber is measured")
        .doesNotContain("pour:left", "pump-cartridge:left");
    Sheet noOuter = Jobs.without(Bench.sheet(), Bench.FORK_OIL);
    assertThat(ids(noOuter, Setup.EMPTY, Scope.FORK, Renewed.SEALS)).contains("pour:left");
    assertThat(ids(noOuter, Setup.EMPTY, Scope.FORK, Renewed.OIL))
        .containsSubsequence("cartridge-fill:cartridge-oil:left", "pour:left", "rod-returns:left");
    assertThat(ids(Bench.sheet(), Bench.setup(), Scope.FORK, Renewed.OIL))
        .as("both are measured")
        .noneMatch(id -> id.startsWith("pour"));
  }

  @Test
  void aClosedCartridgeInAForkWithoutPressureStaysClosedToo() {
    Sheet closed = Jobs.withFork(Bench.sheet(), ForkKind.OPEN_BATH);
    assertThat(ids(closed, Bench.setup(), Scope.FORK, Renewed.SEALS))
        .contains("fill:fork-oil:left")
        .doesNotContain("pump-cartridge:left", "pour:left", "rod-even:left");
    assertThat(ids(closed, Bench.setup(), Scope.FORK, Renewed.OIL))
        .containsSubsequence(
            "cartridge-fill:cartridge-oil:left", "pump-cartridge:left", "rod-even:left")
        .doesNotContain("pour:left");
  }

  /** A cartridge in one leg is filled there, and that is where it belongs. */
  @Test
  void aCartridgeInOneLegIsFilledInThatLegAlone() {
    Setting oil = Bench.sheet().setting(Bench.CARTRIDGE_OIL).orElseThrow();
    Sheet sheet = Jobs.replacing(Bench.sheet(), Jobs.in(oil, Carrier.LEFT));
    List<String> ids = ids(sheet, Setup.EMPTY, Scope.FORK, Renewed.OIL);
    assertThat(ids)
        .containsSubsequence("drain:left", "place:cartridge-oil", "pump-cartridge:left")
        .noneMatch(id -> id.startsWith("cartridge-fill"));
    assertThat(ids.indexOf("place:cartridge-oil")).isLessThan(ids.indexOf("assemble:left"));
  }

  @Test
  void theRearIsClosedInTheOrderOfTheTrade() {
    Sheet sheet =
        with(Bench.sheet(), millimetres(AXLE, Role.AXLE_POSITION), millimetres(OTHER, Role.OTHER));
    Setup baseline =
        Jobs.with(Jobs.with(Bench.setup(), AXLE, Reading.of(mm("4"))), OTHER, Reading.of(mm("4")));
    Setup drifted =
        Jobs.with(
            Jobs.with(Jobs.with(baseline, OTHER, Reading.of(mm("7"))), Bench.TUBE, at("8")),
            AXLE,
            at("9"));
    Plan plan = Jobs.plan(Jobs.from(sheet, baseline, drifted, Scope.SHOCK));
    assertThat(Jobs.ids(plan))
        .containsSubsequence(
            "place:axle",
            "chain",
            "place:tyre-front",
            "place:tyre-rear",
            "place:shock-preload",
            "race-sag",
            "free-sag",
            "place:tube-above-clamp",
            "place:shock-low-speed",
            "place:other",
            "shake-down");
    Plan still = Jobs.plan(Jobs.from(sheet, baseline, baseline, Scope.SHOCK));
    assertThat(Jobs.ids(still))
        .contains("place:axle")
        .doesNotContain("place:tube-above-clamp", "place:other");
  }

  private static Reading at(String millimetres) {
    return Reading.of(mm(millimetres));
  }

  /** Where a sag does not come out, the preload of its own end is turned again. */
  @Test
  void eachSagFallsBackToThePreloadOfItsEnd() {
    Sheet sheet = with(Bench.sheet(), millimetres(FORK_PRELOAD, Role.FORK_PRELOAD));
    Setup setup = Jobs.with(Bench.setup(), FORK_PRELOAD, Reading.bothLegs(mm("5")));
    Plan plan = Jobs.plan(Jobs.from(sheet, setup, setup, Scope.BOTH));
    assertThat(step(plan, "race-sag").otherwise()).contains(StepId.placing(Bench.PRELOAD));
    assertThat(step(plan, "free-sag").otherwise()).contains(StepId.placing(Bench.PRELOAD));
    assertThat(step(plan, "front-race-sag").otherwise()).contains(StepId.placing(FORK_PRELOAD));
    Plan fork = Jobs.plan(Jobs.from(sheet, setup, setup, Scope.FORK));
    assertThat(step(fork, "race-sag").otherwise()).as("the shock was not touched").isEmpty();
  }

  @Test
  void sagOfTheFrontIsMeasuredAfterAForkOrWhereItHasAWindow() {
    Parts parts = Bench.sheet().parts();
    SagWindows none = SagWindows.none();
    Sheet without =
        Bench.sheet().withParts(new Parts(parts.fork(), parts.shock(), parts.geometry(), none));
    assertThat(ids(without, Bench.setup(), Scope.FORK)).contains("front-race-sag");
    assertThat(ids(without, Bench.setup(), Scope.SHOCK)).doesNotContain("front-race-sag");
    assertThat(ids(Bench.sheet(), Bench.setup(), Scope.SHOCK)).contains("front-race-sag");
  }

  /** An adjuster with no end to count from has no total. */
  @Test
  void onlyWhatHasAnEndIsCountedFromStopToStop() {
    for (Datum datum : Datum.values()) {
      Setting rebound = Bench.sheet().setting(Bench.FORK_REBOUND).orElseThrow();
      Scale scale = rebound.scale();
      Setting counted =
          new Setting(
              rebound.id(),
              rebound.name(),
              rebound.role(),
              rebound.carrier(),
              new Scale(
                  scale.limits(), scale.wish(), scale.step(), datum, Sense.FASTER, scale.total()),
              rebound.work());
      Sheet sheet = Jobs.replacing(Bench.sheet(), counted);
      boolean hasEnd = datum == Datum.OUT_FROM_CLOSED || datum == Datum.IN_FROM_OPEN;
      assertThat(ids(sheet, Bench.setup(), Scope.FORK).contains("total:fork-rebound:left"))
          .as(datum.name())
          .isEqualTo(hasEnd);
    }
  }

  @Test
  void aNewSpringIsFittedAtTheEndThatIsRebuilt() {
    Plan fork = Jobs.plan(Scope.FORK, Renewed.SPRING);
    assertThat(step(fork, "place:fork-spring").target()).isEmpty();
    assertThat(Jobs.ids(fork)).doesNotContain("place:shock-spring");
    Setup other = Jobs.with(Bench.setup(), Bench.SHOCK_SPRING, spring("57"));
    Plan shock =
        Jobs.plan(Jobs.from(Bench.sheet(), Bench.setup(), other, Scope.SHOCK, Renewed.SPRING));
    assertThat(step(shock, "place:shock-spring").target()).isEmpty();
    Plan back = Jobs.plan(Jobs.from(Bench.sheet(), Bench.setup(), other, Scope.SHOCK));
    assertThat(step(back, "place:shock-spring").target().map(Target::reading))
        .as("without a new one, the baseline's goes back in")
        .contains(spring("54"));
  }

  private static Reading spring(String rate) {
    return Reading.of(Amount.of(rate, SpringRate.NEWTON_PER_MILLIMETRE));
  }

  /** What was measured with is asked where oil is filled, and nowhere else. */
  @Test
  void theInstrumentIsAskedWhereOilIsFilled() {
    Plan plan = Jobs.plan(Scope.BOTH, Renewed.OIL);
    assertThat(plan.steps().stream().filter(each -> each.ask().instrument()))
        .extracting(each -> each.id().text())
        .containsExactly(
            "cartridge-fill:cartridge-oil:left",
            "fill:fork-oil:left",
            "cartridge-fill:cartridge-oil:right",
            "fill:fork-oil:right",
            "place:cartridge-oil",
            "place:fork-oil");
  }

  @Test
  void sagIsAskedInTheUnitOfTheBaseline() {
    assertThat(step(Jobs.plan(Scope.FORK), "race-sag").ask().unit()).contains(Length.MILLIMETRE);
    PlanFrom from = Jobs.from(Scope.FORK);
    Amount inches = Amount.of("4.1", Length.INCH);
    Entry.Baseline baseline = from.baseline();
    PlanFrom american =
        new PlanFrom(
            from.sheet(),
            new Entry.Baseline(
                baseline.head(),
                baseline.setup(),
                Optional.of(inches),
                Optional.empty(),
                "",
                Optional.empty()),
            from.job(),
            List.of());
    Plan plan = Planner.plan(american, Advisor.SILENT);
    assertThat(step(plan, "race-sag").ask().unit()).contains(Length.INCH);
    assertThat(step(plan, "race-sag").target().map(Target::reading)).contains(Reading.of(inches));
    assertThat(step(plan, "free-sag").target()).isEmpty();
    assertThat(step(plan, "free-sag").ask().unit()).as("of the window").contains(Length.MILLIMETRE);
  }

  @Test
  void tolerancesAreThoseOfTheThing() {
    Sheet sheet = with(Bench.sheet(), millimetres(FORK_PRELOAD, Role.FORK_PRELOAD));
    assertThat(tolerance(sheet, Bench.FORK_REBOUND)).isEqualTo(clicks(0));
    assertThat(tolerance(sheet, Bench.HIGH_SPEED).value()).isZero();
    assertThat(tolerance(sheet, Bench.FORK_SPRING).value()).isZero();
    assertThat(tolerance(sheet, Bench.FORK_OIL)).isEqualTo(Bench.ml("2"));
    assertThat(tolerance(sheet, Bench.TUBE)).isEqualTo(mm("1"));
    assertThat(tolerance(sheet, FORK_PRELOAD)).isEqualTo(mm("1"));
    assertThat(Tolerances.legs(Dimension.LENGTH, mm("5"))).isEqualTo(mm("1"));
    assertThat(Tolerances.legs(Dimension.PRESSURE, Jobs.bar("0.1"))).isEqualTo(Jobs.bar("0.1"));
  }

  private static Amount tolerance(Sheet sheet, SettingId id) {
    return Tolerances.of(sheet.setting(id).orElseThrow());
  }
}
