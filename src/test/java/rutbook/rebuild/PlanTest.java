package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.floz;
import static rutbook.notebook.Bench.ml;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Datum;
import rutbook.notebook.Fastener;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Limits;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.Scale;
import rutbook.notebook.Scope;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Tightening;
import rutbook.notebook.Value;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Torque;

class PlanTest {
  private static Step step(Plan plan, String id) {
    return plan.step(new StepId(id)).orElseThrow(() -> new AssertionError("no step " + id));
  }

  @Test
  void aForkWithFreshOilIsTakenThroughTheseStepsAndNoOthers() {
    assertThat(Jobs.ids(Jobs.plan(Scope.FORK, Renewed.OIL)))
        .containsExactly(
            "hours",
            "bleed-air",
            "count:fork-compression",
            "count:fork-rebound",
            "back-out",
            "stand",
            "loosen-caps",
            "wheel-off",
            "legs-out",
            "strip:left",
            "drain:left",
            "cartridge-fill:cartridge-oil:left",
            "pump-cartridge:left",
            "rod-returns:left",
            "fill:fork-oil:left",
            "assemble:left",
            "total:fork-compression:left",
            "total:fork-rebound:left",
            "strip:right",
            "drain:right",
            "cartridge-fill:cartridge-oil:right",
            "pump-cartridge:right",
            "rod-returns:right",
            "fill:fork-oil:right",
            "assemble:right",
            "total:fork-compression:right",
            "total:fork-rebound:right",
            "place:cartridge-oil",
            "place:fork-oil",
            "place:tube-above-clamp",
            "clamp-lower",
            "caps",
            "clamp-upper",
            "wheel-on",
            "axle-in",
            "pinch-first:right",
            "axle-nut",
            "spin",
            "compress:left",
            "pinch-last:left",
            "brake-firm",
            "chain",
            "place:tyre-front",
            "place:tyre-rear",
            "race-sag",
            "free-sag",
            "front-race-sag",
            "place:fork-compression",
            "place:fork-rebound",
            "shake-down",
            "recheck",
            "confirm-moto",
            "confirm");
  }

  // Common practice, no source: counts written, and adjusters backed right out, before anything.
  @Test
  void countsAreWrittenAndAdjustersBackedOutBeforeTheForkIsApart() {
    for (Sheet sheet : List.of(Bench.sheet(), Jobs.split(), Jobs.air())) {
      List<String> ids =
          Jobs.ids(Jobs.plan(Jobs.from(sheet, Bench.setup(), Bench.setup(), Scope.FORK)));
      assertThat(ids)
          .containsSubsequence(
              "count:fork-compression", "count:fork-rebound", "back-out", "loosen-caps");
      assertThat(ids).containsSubsequence("back-out", "strip:left");
      assertThat(ids).containsSubsequence("back-out", "strip:right");
    }
  }

  // Common practice, no source: the order around the axle.
  @Test
  void theFloatingSideIsPinchedLastWithTheForkCompressedOffTheStand() {
    Plan plan = Jobs.plan(Scope.FORK);
    assertThat(Jobs.ids(plan))
        .containsSubsequence(
            "axle-in",
            "pinch-first:right",
            "axle-nut",
            "spin",
            "compress:left",
            "pinch-last:left",
            "brake-firm");
    assertThat(step(plan, "compress:left").place()).isEqualTo(Place.FLOOR);
    assertThat(step(plan, "spin").place()).isEqualTo(Place.STAND);

    Sheet unsaid = Bench.sheet().withPinchedFirst(Optional.empty());
    Plan open = Jobs.plan(Jobs.from(unsaid, Bench.setup(), Bench.setup(), Scope.FORK));
    assertThat(Jobs.ids(open))
        .containsSubsequence("pinch-first", "axle-nut", "spin", "compress", "pinch-last");
    assertThat(step(open, "pinch-first").cautions()).contains(Caution.SIDE_NOT_ON_SHEET);
  }

  // Common practice, no source: a rod that does not come back means air is left.
  @Test
  void aRodThatDoesNotReturnMeansBleedingAgain() {
    Plan plan = Jobs.plan(Scope.FORK);
    Step rod = step(plan, "rod-returns:left");
    assertThat(rod.kind().doneWhen()).isEqualTo(DoneWhen.ROD_RETURNS_BY_ITSELF);
    assertThat(rod.otherwise()).contains(new StepId("pump-cartridge:left"));
    assertThat(plan.reopenedBy(rod.id()))
        .startsWith(new StepId("pump-cartridge:left"), new StepId("rod-returns:left"))
        .contains(new StepId("fill:fork-oil:left"), new StepId("place:fork-oil"))
        .doesNotContain(new StepId("drain:left"), new StepId("rod-returns:right"));
    assertThat(plan.reopenedBy(new StepId("stand"))).isEmpty();
  }

  @Test
  void anOpenBathForkIsPumpedToEvenResistanceBeforeItsLevelIsSet() {
    Sheet sheet =
        Jobs.without(Jobs.withFork(Bench.sheet(), ForkKind.OPEN_BATH), Bench.CARTRIDGE_OIL);
    List<String> ids =
        Jobs.ids(Jobs.plan(Jobs.from(sheet, Bench.setup(), Bench.setup(), Scope.FORK)));
    assertThat(ids)
        .containsSubsequence(
            "drain:left",
            "pour:left",
            "pump-cartridge:left",
            "rod-even:left",
            "fill:fork-oil:left");
    assertThat(ids).noneMatch(id -> id.startsWith("rod-returns") || id.contains("cartridge-oil"));
  }

  @Test
  void anAirForkIsEmptiedBeforeAnythingElseAndFilledBeforeItStandsAgain() {
    Plan plan = Jobs.plan(Jobs.from(Jobs.air(), Jobs.airSetup(), Jobs.airSetup(), Scope.FORK));
    assertThat(Jobs.ids(plan)).startsWith("hours", "air-note:fork-air", "air-release", "bleed-air");
    assertThat(Jobs.ids(plan))
        .containsSubsequence("air-release", "loosen-caps", "place:fork-air", "compress:left");
    assertThat(step(plan, "air-release").cautions()).contains(Caution.RELEASE_AIR_FIRST);
    assertThat(step(plan, "air-release").kind().doneWhen()).isEqualTo(DoneWhen.GAUGE_READS_ZERO);
    assertThat(step(plan, "place:fork-air").leg()).contains(Side.LEFT);
  }

  /** Every fork traps air; a shock alone does not ask for it. */
  @Test
  void trappedAirIsLetOutBeforeAnythingIsLoosenedOnEveryFork() {
    for (Sheet sheet : List.of(Bench.sheet(), Jobs.split(), Jobs.air())) {
      Plan plan = Jobs.plan(Jobs.from(sheet, Bench.setup(), Bench.setup(), Scope.FORK));
      assertThat(Jobs.ids(plan)).containsSubsequence("bleed-air", "count:fork-rebound", "stand");
      assertThat(step(plan, "bleed-air").cautions()).contains(Caution.RELEASE_AIR_FIRST);
    }
    assertThat(Jobs.ids(Jobs.plan(Scope.SHOCK))).doesNotContain("bleed-air");
  }

  @Test
  void raceSagOfTheFrontIsMeasuredAgainstTheWindowOfTheSheet() {
    PlanFrom from = Jobs.from(Scope.FORK);
    Step front = step(Jobs.plan(from), "front-race-sag");
    assertThat(front.goal().wish()).isEqualTo(Bench.sheet().parts().sag().frontRace());
    assertThat(front.target()).isEmpty();

    Plan inside = Jobs.plan(from, Jobs.measured("front-race-sag", Reading.of(Bench.mm("80"))));
    assertThat(inside.findings()).isEmpty();
    Plan outside = Jobs.plan(from, Jobs.measured("front-race-sag", Reading.of(Bench.mm("81"))));
    assertThat(outside.findings())
        .containsExactly(
            new Finding.OutsideWish(
                front.id(),
                StepKind.FRONT_RACE_SAG,
                Bench.mm("81"),
                front.goal().wish().orElseThrow()));
  }

  @Test
  void legsMeantToDifferAreDoneWhenTheyDifferSo() {
    Setup apart = Jobs.with(Bench.setup(), Bench.FORK_OIL, Reading.of(ml("330"), ml("340")));
    PlanFrom from = Jobs.from(Bench.sheet(), apart, apart, Scope.FORK, Renewed.OIL);
    Plan asMeant =
        Jobs.plan(
            from,
            Jobs.measured("fill:fork-oil:left", Reading.of(ml("330"))),
            Jobs.measured("fill:fork-oil:right", Reading.of(ml("341"))),
            Jobs.measured("place:fork-oil", Reading.of(ml("330"), ml("341"))));
    assertThat(asMeant.findings()).isEmpty();

    Plan alike = Jobs.plan(from, Jobs.measured("place:fork-oil", Reading.bothLegs(ml("335"))));
    assertThat(alike.findings())
        .filteredOn(Finding.LegsDiffer.class::isInstance)
        .singleElement()
        .satisfies(found -> assertThat(found.again()).isTrue());
  }

  @Test
  void stepsOfSettingsWithTheLongestAndTheOddestIdsAreToldApart() {
    Setting compression = Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();
    List<Setting> settings = new ArrayList<>();
    for (String id : List.of("s".repeat(80), "a", "a:left", "a:", "a::left")) {
      Carrier carrier = id.endsWith("left") ? Carrier.SINGLE : Carrier.PAIR;
      settings.add(
          new Setting(
              new SettingId(id),
              "Odd " + settings.size(),
              Role.FORK_COMPRESSION,
              carrier,
              compression.scale(),
              compression.work()));
    }
    Sheet sheet = Bench.sheet().withSettings(settings);
    Plan plan = Jobs.plan(Jobs.from(sheet, Setup.EMPTY, Setup.EMPTY, Scope.FORK));
    assertThat(Jobs.ids(plan)).doesNotHaveDuplicates().contains("place:" + "s".repeat(80));
  }

  @Test
  void aSplitForkCountsOnlyWhatALegCarries() {
    Plan plan =
        Jobs.plan(Jobs.from(Jobs.split(), Jobs.splitSetup(), Jobs.splitSetup(), Scope.FORK));
    assertThat(Jobs.ids(plan))
        .contains("total:fork-compression:left", "total:fork-rebound:right")
        .doesNotContain("total:fork-compression:right", "total:fork-rebound:left");
    assertThat(step(plan, "count:fork-compression").ask().bothLegs()).isFalse();
    assertThat(step(plan, "place:fork-rebound").leg()).contains(Side.RIGHT);
  }

  @Test
  void aShockGoesToTheLicensedShopAndIsNeverOpened() {
    Plan plan = Jobs.plan(Scope.SHOCK, Renewed.OIL);
    assertThat(Jobs.ids(plan))
        .containsSubsequence(
            "count:shock-low-speed",
            "note-installed-length",
            "stand",
            "shock-off",
            "shop-sheet",
            "shop-return",
            "shop-gas",
            "shop-found:shock-spring",
            "shop-found:shock-preload",
            "shop-found:shock-low-speed",
            "shop-found:shock-rebound",
            "linkage",
            "shock-in",
            "total:shock-rebound",
            "place:shock-preload",
            "race-sag",
            "free-sag",
            "place:shock-low-speed",
            "place:shock-rebound",
            "shake-down")
        .noneMatch(id -> id.startsWith("strip") || id.startsWith("drain") || id.equals("spin"));
    assertThat(step(plan, "shock-off").cautions()).contains(Caution.NEVER_OPEN_GAS);
    assertThat(step(plan, "shop-sheet").cautions())
        .contains(Caution.NEVER_OPEN_GAS, Caution.LICENSED_FIRST);
    assertThat(step(plan, "race-sag").otherwise()).contains(StepId.placing(Bench.PRELOAD));
  }

  @Test
  void withBothTheForkIsDoneWhileTheShockIsAtTheShop() {
    List<String> ids = Jobs.ids(Jobs.plan(Scope.BOTH, Renewed.OIL));
    assertThat(ids)
        .containsSubsequence("shop-sheet", "strip:left", "spin", "shop-return", "shock-in")
        .containsSubsequence("shock-in", "compress:left", "chain");
  }

  @Test
  void newSealsAloneLeaveAPressurisedCartridgeClosed() {
    List<String> ids = Jobs.ids(Jobs.plan(Scope.FORK, Renewed.SEALS));
    assertThat(ids).contains("fit-seals:left", "fill:fork-oil:left");
    assertThat(ids).noneMatch(id -> id.contains("cartridge"));
    assertThat(Jobs.plan(Scope.FORK, Renewed.SEALS).remarks())
        .hasOnlyElementsOfType(Remark.RunningIn.class)
        .hasSize(1);
  }

  @Test
  void aNewSpringIsEnteredPerLegAndItsRatioIsSaidWithoutTouchingTheBaseline() {
    PlanFrom from = Jobs.from(Scope.FORK, Renewed.SPRING);
    Plan before = Jobs.plan(from);
    assertThat(step(before, "place:fork-spring").target()).isEmpty();
    assertThat(Jobs.ids(before)).contains("fit-spring:fork-spring:left", "new-sheet");
    Reading firmer =
        Reading.bothLegs(
            rutbook.units.Amount.of("4.83", rutbook.units.SpringRate.NEWTON_PER_MILLIMETRE));
    Plan after = Jobs.plan(from, Jobs.measured("place:fork-spring", firmer));
    assertThat(after.remarks()).hasSize(1);
    Remark.SpringRatio ratio = (Remark.SpringRatio) after.remarks().get(0);
    assertThat(ratio.ratio()).isCloseTo(4.83 / 4.6, org.assertj.core.data.Offset.offset(1e-12));
    assertThat(step(after, "place:fork-compression").target().orElseThrow().reading())
        .isEqualTo(Reading.bothLegs(clicks(12)));
  }

  // Common practice, no source: outer chamber at least 10 and at most 13 US fl oz.
  @Test
  void aBaselineFillAboveTheMostIsHeldThereAndTheShortfallSaid() {
    Setup baseline = Jobs.outer("13.5");
    Plan plan = Jobs.plan(Jobs.from(Jobs.american(), baseline, baseline, Scope.FORK, Renewed.OIL));
    Target target = step(plan, "place:fork-oil").target().orElseThrow();
    assertThat(target.reading()).isEqualTo(Reading.bothLegs(floz("13")));
    assertThat(plan.shortfalls())
        .extracting(Shortfall::leg, Shortfall::wanted, Shortfall::held, Shortfall::missing)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                Optional.of(Side.LEFT), floz("13.5"), floz("13"), floz("0.5")),
            org.assertj.core.groups.Tuple.tuple(
                Optional.of(Side.RIGHT), floz("13.5"), floz("13"), floz("0.5")));
    assertThat(plan.shortfalls().get(0).wantedMore()).isTrue();
    assertThat(plan.shortfalls().get(0).sense()).isEqualTo(rutbook.notebook.Sense.SOFTER);
    assertThat(step(plan, "fill:fork-oil:left").target().orElseThrow().shortfalls()).hasSize(1);
  }

  @Test
  void aBaselineFillBelowTheLeastIsHeldThere() {
    Setup baseline = Jobs.outer("9.5");
    Plan plan = Jobs.plan(Jobs.from(Jobs.american(), baseline, baseline, Scope.FORK));
    assertThat(step(plan, "place:fork-oil").target().orElseThrow().reading())
        .isEqualTo(Reading.bothLegs(floz("10")));
    assertThat(plan.shortfalls().get(0).wantedMore()).isFalse();
  }

  // Common practice, no source: 8.3 US fl oz are 245 mL, 10 are 296, 13 are 384.
  @Test
  void fillsAreTheSameInBothSystems() {
    assertThat(List.of("8.3", "10", "13"))
        .extracting(
            number -> floz(number).in(rutbook.units.Volume.MILLILITRE, 0, RoundingMode.HALF_EVEN))
        .containsExactly(ml("245"), ml("296"), ml("384"));
    Setup unknown =
        Jobs.with(
            Jobs.outer("11"),
            Bench.CARTRIDGE_OIL,
            Reading.unknown(rutbook.notebook.Carrier.PAIR, WhyUnknown.NOT_NOTED));
    Plan plan = Jobs.plan(Jobs.from(Jobs.american(), unknown, unknown, Scope.FORK, Renewed.OIL));
    assertThat(step(plan, "place:cartridge-oil").target().orElseThrow().reading())
        .isEqualTo(Reading.bothLegs(floz("8.3")));
  }

  // Common practice, no source: torques, and the same in newton metres to one decimal.
  @Test
  void torquesStandAtTheirStepAndAreTheSameInBothSystems() {
    Plan plan =
        Jobs.plan(Jobs.from(Jobs.american(), Jobs.outer("11"), Jobs.outer("11"), Scope.FORK));
    assertThat(torques(step(plan, "assemble:left")))
        .containsExactly("16 lbf·ft = 21.7 N·m", "51 lbf·ft = 69.1 N·m");
    assertThat(torques(step(plan, "clamp-lower"))).containsExactly("15 lbf·ft = 20.3 N·m");
    assertThat(torques(step(plan, "pinch-last:left"))).containsExactly("15 lbf·ft = 20.3 N·m");
    assertThat(torques(step(plan, "wheel-on"))).containsExactly("22 lbf·ft = 29.8 N·m");
    assertThat(torques(step(plan, "axle-nut"))).containsExactly("65 lbf·ft = 88.1 N·m");
    assertThat(step(plan, "caps").cautions()).contains(Caution.TORQUE_NOT_ON_SHEET);
    assertThat(step(plan, "axle-nut").goal().torques())
        .extracting(Tightening::fastener)
        .containsExactly(Fastener.AXLE_NUT);
  }

  private static List<String> torques(Step step) {
    return step.goal().torques().stream()
        .map(
            each ->
                each.amount()
                    + " = "
                    + each.amount().in(Torque.NEWTON_METRE, 1, RoundingMode.HALF_UP))
        .toList();
  }

  @Test
  void legsWithinTwoMillilitresAreEqualAndBeyondAreDoneAgain() {
    PlanFrom from = Jobs.from(Scope.FORK, Renewed.OIL);
    Plan equal =
        Jobs.plan(
            from,
            Jobs.measured("fill:fork-oil:left", Reading.of(ml("335"))),
            Jobs.measured("fill:fork-oil:right", Reading.of(ml("337"))));
    assertThat(equal.findings()).isEmpty();
    assertThat(equal.prefilled(step(equal, "place:fork-oil")))
        .contains(Reading.of(ml("335"), ml("337")));

    Plan unequal =
        Jobs.plan(
            from,
            Jobs.measured("fill:fork-oil:left", Reading.of(ml("334"))),
            Jobs.measured("fill:fork-oil:right", Reading.of(ml("336.1"))));
    Step second = step(unequal, "fill:fork-oil:right");
    assertThat(unequal.findings(second.id()))
        .singleElement()
        .isInstanceOfSatisfying(
            Finding.LegsDiffer.class, found -> assertThat(found.mayDiffer()).isEqualTo(ml("2")));
    assertThat(unequal.state(second)).isEqualTo(Plan.State.AGAIN);
  }

  @Test
  void aFillBeyondALimitIsDoneAgain() {
    Plan plan =
        Jobs.plan(
            Jobs.from(Scope.FORK), Jobs.measured("fill:fork-oil:left", Reading.of(ml("381"))));
    assertThat(plan.findings())
        .filteredOn(Finding.OutsideLimits.class::isInstance)
        .singleElement()
        .satisfies(found -> assertThat(found.again()).isTrue());
    assertThat(plan.state(step(plan, "fill:fork-oil:left"))).isEqualTo(Plan.State.AGAIN);
  }

  @Test
  void aTotalMayBeOneClickOffAndTwoAreAWarning() {
    PlanFrom from = Jobs.from(Scope.FORK);
    assertThat(
            Jobs.plan(from, Jobs.counted("total:fork-rebound:left", Reading.of(clicks(21))))
                .findings())
        .isEmpty();
    Plan off = Jobs.plan(from, Jobs.counted("total:fork-rebound:left", Reading.of(clicks(18))));
    assertThat(off.findings())
        .singleElement()
        .isInstanceOfSatisfying(
            Finding.TotalOff.class,
            found -> {
              assertThat(found.expected()).isEqualTo(clicks(20));
              assertThat(found.counted()).isEqualTo(clicks(18));
              assertThat(found.leg()).contains(Side.LEFT);
            });
    assertThat(off.state(step(off, "total:fork-rebound:left"))).isEqualTo(Plan.State.DONE);
  }

  /** Some adjusters are neither clicked nor turned. */
  @Test
  void aTotalOfAnAdjusterInMillimetresMayBeOneStepOff() {
    Setting inMillimetres =
        new Setting(
            Bench.FORK_REBOUND,
            "Rod",
            Role.FORK_REBOUND,
            Carrier.PAIR,
            new Scale(
                Limits.stops(Bench.mm("0"), Bench.mm("8")),
                Optional.empty(),
                Bench.mm("0.5"),
                Datum.OUT_FROM_CLOSED,
                rutbook.notebook.Sense.FASTER,
                OptionalInt.of(8)),
            rutbook.notebook.Work.TRACKSIDE);
    Sheet sheet = Jobs.replacing(Bench.sheet(), inMillimetres);
    PlanFrom from = Jobs.from(sheet, Setup.EMPTY, Setup.EMPTY, Scope.FORK);
    String total = "total:fork-rebound:left";
    assertThat(Jobs.plan(from, Jobs.counted(total, Reading.of(Bench.mm("7.5")))).findings())
        .isEmpty();
    assertThat(Jobs.plan(from, Jobs.counted(total, Reading.of(Bench.mm("7")))).findings())
        .hasOnlyElementsOfType(Finding.TotalOff.class);
  }

  @Test
  void countsThatDifferFromTheNotebookAreSaidPerLeg() {
    Plan plan =
        Jobs.plan(
            Jobs.from(Scope.FORK),
            Jobs.counted("count:fork-compression", Reading.of(clicks(12), clicks(14))));
    assertThat(plan.findings())
        .singleElement()
        .isInstanceOfSatisfying(
            Finding.CountDiffers.class,
            found -> {
              assertThat(found.leg()).contains(Side.RIGHT);
              assertThat(found.noted()).isEqualTo(clicks(12));
              assertThat(found.counted()).isEqualTo(clicks(14));
            });
  }

  @Test
  void halfACountIsNotDone() {
    Reading half =
        new Reading.Pair(Value.of(clicks(12)), new Value.Unknown(WhyUnknown.NOT_COUNTED));
    Plan plan =
        Jobs.plan(
            Jobs.from(Scope.FORK),
            Jobs.ticked("hours"),
            Jobs.counted("count:fork-compression", half));
    assertThat(plan.state(step(plan, "count:fork-compression"))).isEqualTo(Plan.State.AGAIN);
  }

  @Test
  void aWholeJobDoneAsItShouldBeLeavesNothingOpen() {
    PlanFrom from = Jobs.from(Scope.BOTH, Renewed.OIL, Renewed.SEALS);
    List<StepDone> done = new ArrayList<>();
    Plan plan = Jobs.plan(from);
    while (plan.next().isPresent()) {
      Step next = plan.next().get();
      assertThat(plan.state(next)).as(next.id().text()).isEqualTo(Plan.State.READY);
      done.add(Jobs.asItShould(next));
      plan = Jobs.plan(from, done.toArray(new StepDone[0]));
    }
    assertThat(done).hasSameSizeAs(plan.steps());
    assertThat(plan.findings()).isEmpty();
    assertThat(plan.minutesLeft()).isZero();
    assertThat(plan.tools()).isEmpty();
    assertThat(plan.back().items()).isEmpty();
    assertThat(plan.leftOver()).isEmpty();
  }

  @Test
  void aSkippedStepLetsWorkGoOnAndStaysAFinding() {
    Plan plan = Jobs.plan(Jobs.from(Scope.FORK), Jobs.skipped("hours", "meter broken"));
    assertThat(plan.state(step(plan, "hours"))).isEqualTo(Plan.State.SKIPPED);
    assertThat(plan.findings())
        .containsExactly(new Finding.Skipped(new StepId("hours"), StepKind.HOURS, "meter broken"));
    assertThat(plan.next().orElseThrow().id()).isEqualTo(new StepId("bleed-air"));
  }

  @Test
  void whatAJobDoesNotReachIsNamed() {
    Setup drifted = Jobs.with(Bench.setup(), Bench.FORK_OIL, Reading.bothLegs(ml("345")));
    Plan plan = Jobs.plan(Jobs.from(Bench.sheet(), Bench.setup(), drifted, Scope.SHOCK));
    assertThat(plan.leftOver())
        .extracting(each -> each.setting().id())
        .containsExactly(Bench.FORK_OIL);
  }

  @Test
  void aClickerElsewhereOnTheBikeIsBroughtBackWithTheJob() {
    Setup drifted = Jobs.with(Bench.setup(), Bench.LOW_SPEED, Reading.of(clicks(6)));
    Plan plan = Jobs.plan(Jobs.from(Bench.sheet(), Bench.setup(), drifted, Scope.FORK));
    assertThat(Jobs.ids(plan))
        .containsSubsequence(
            "place:fork-compression", "place:shock-low-speed", "place:fork-rebound");
    assertThat(Jobs.ids(plan)).doesNotContain("place:shock-rebound");
  }

  @Test
  void everyKindOfStepKeepsItsIdBetweenVersions() {
    // These words are in people's notebooks.
    assertThat(Set.of(StepKind.values())).hasSize(63);
    assertThat(Step.id(StepKind.PINCH_LAST, Subject.of(Side.LEFT)))
        .isEqualTo(new StepId("pinch-last:left"));
  }
}
