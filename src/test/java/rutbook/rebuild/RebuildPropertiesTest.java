package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import rutbook.notebook.Bench;
import rutbook.notebook.Bounds;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.Fastener;
import rutbook.notebook.ForkKind;
import rutbook.notebook.Job;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Value;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Amount;

/** What must hold for every job on every sheet. */
class RebuildPropertiesTest {

  /** Random jobs: fork kinds, settings missing or in one leg, narrow limits, readings anywhere. */
  @Provide
  Arbitrary<PlanFrom> jobs() {
    return Arbitraries.longs().map(seed -> job(new Random(seed)));
  }

  private static PlanFrom job(Random random) {
    Sheet sheet = sheet(random);
    Setup baseline = setup(sheet, random);
    Setup before = setup(sheet, random);
    Set<Renewed> renewed = new HashSet<>();
    for (Renewed each : Renewed.values()) {
      if (random.nextBoolean()) {
        renewed.add(each);
      }
    }
    Scope scope = Scope.values()[random.nextInt(3)];
    Job job = new Job(scope, renewed, Bench.FIRST_BASELINE, before, sheet.from(), Optional.empty());
    return new PlanFrom(sheet, Bench.baseline(baseline), job, List.of());
  }

  private static Sheet sheet(Random random) {
    Sheet whole = random.nextBoolean() ? Bench.sheet() : Jobs.air();
    Sheet sheet = Jobs.withFork(whole, ForkKind.values()[random.nextInt(ForkKind.values().length)]);
    List<Setting> settings = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      if (random.nextInt(6) > 0) {
        Carrier carrier = Carrier.values()[random.nextInt(Carrier.values().length)];
        boolean front = setting.carrier() == Carrier.PAIR;
        settings.add(front ? Jobs.in(setting, carrier) : setting);
      }
    }
    Collections.shuffle(settings, random);
    List<Chamber> chambers = new ArrayList<>();
    for (Chamber chamber : sheet.chambers()) {
      int least = 150 + random.nextInt(200);
      Range narrow = new Range(Bench.ml("" + least), Bench.ml("" + (least + random.nextInt(20))));
      chambers.add(
          new Chamber(
              chamber.id(),
              chamber.name(),
              chamber.carrier(),
              chamber.measure(),
              narrow,
              Optional.of(narrow.least()),
              Optional.empty()));
    }
    return sheet
        .withSettings(settings)
        .withChambers(chambers)
        .withPinchedFirst(
            random.nextBoolean()
                ? Optional.empty()
                : Optional.of(Side.values()[random.nextInt(2)]));
  }

  /** Readings anywhere between a third of the least and twice the most, some of them unknown. */
  private static Setup setup(Sheet sheet, Random random) {
    Setup setup = Setup.EMPTY;
    for (Setting setting : sheet.settings()) {
      if (random.nextInt(8) == 0) {
        continue;
      }
      Reading reading =
          setting.carrier() == Carrier.PAIR
              ? new Reading.Pair(value(sheet, setting, random), value(sheet, setting, random))
              : new Reading.One(value(sheet, setting, random));
      setup = setup.with(Placed.found(setting.id(), reading));
    }
    return setup;
  }

  private static Value value(Sheet sheet, Setting setting, Random random) {
    if (random.nextInt(5) == 0) {
      return new Value.Unknown(WhyUnknown.NOT_NOTED);
    }
    Range limits = sheet.limits(setting);
    BigDecimal least =
        limits.least().value().divide(BigDecimal.valueOf(3), 1, java.math.RoundingMode.DOWN);
    double span = limits.most().value().doubleValue() * 2 - least.doubleValue();
    BigDecimal number =
        least.add(BigDecimal.valueOf(Math.round(random.nextDouble() * span * 100), 2));
    Amount amount = limits.least().withValue(number);
    return Value.of(
        setting.scale().isGrid()
            ? amount.withValue(number.setScale(0, java.math.RoundingMode.HALF_UP))
            : amount);
  }

  @Property(tries = 400, seed = "11")
  void noTargetEverLeavesALimit(@ForAll("jobs") PlanFrom from) {
    Plan plan = Planner.plan(from, Advisor.SILENT);
    for (Step step : plan.steps()) {
      if (step.setting().isPresent() && step.target().isPresent()) {
        for (Amount amount : step.target().get().reading().amounts()) {
          assertThat(Bounds.refusal(from.sheet(), step.setting().get(), amount))
              .as("%s to %s", step.id(), amount)
              .isEmpty();
        }
      }
    }
    for (SettingReturn each : plan.back().settings()) {
      for (LegMove move : each.moves()) {
        assertThat(Bounds.refusal(from.sheet(), each.setting(), move.to())).isEmpty();
      }
    }
  }

  @Property(tries = 400, seed = "12")
  void everythingHeldIsSaidAsAShortfallAndNothingElse(@ForAll("jobs") PlanFrom from) {
    ReturnToBaseline back = Planner.plan(from, Advisor.SILENT).back();
    for (SettingReturn each : back.settings()) {
      long held = 0;
      List<Value> wanted = each.wanted().values();
      List<Value> target = each.target().reading().values();
      for (int i = 0; i < wanted.size(); i++) {
        if (wanted.get(i).known().isPresent()
            && !wanted.get(i).known().get().sameQuantity(target.get(i).known().orElseThrow())) {
          held++;
        }
      }
      assertThat(each.shortfalls()).hasSize((int) held);
    }
  }

  @Property(tries = 400, seed = "13")
  void everyStepComesAfterItsPrerequisites(@ForAll("jobs") PlanFrom from) {
    Plan plan = Planner.plan(from, Advisor.SILENT);
    Set<StepId> done = new HashSet<>();
    for (Step step : plan.steps()) {
      assertThat(done).as("before %s", step.id()).containsAll(step.after());
      assertThat(done.add(step.id())).as("%s twice", step.id()).isTrue();
    }
  }

  @Property(tries = 300, seed = "14")
  void theTradeOrderHoldsWhateverTheSheet(@ForAll("jobs") PlanFrom from) {
    Plan plan = Planner.plan(from, Advisor.SILENT);
    List<StepKind> kinds = plan.steps().stream().map(Step::kind).toList();
    List<StepKind> order =
        List.of(
            StepKind.AIR_RELEASE,
            StepKind.COUNT,
            StepKind.BACK_OUT,
            StepKind.STAND,
            StepKind.LOOSEN_CAPS,
            StepKind.STRIP,
            StepKind.CLAMP_LOWER,
            StepKind.PINCH_FIRST,
            StepKind.AXLE_NUT,
            StepKind.SPIN,
            StepKind.COMPRESS,
            StepKind.PINCH_LAST,
            StepKind.BRAKE_FIRM,
            StepKind.CHAIN,
            StepKind.PLACE_TYRE,
            StepKind.PLACE_PRELOAD,
            StepKind.RACE_SAG,
            StepKind.PLACE_CLICKER,
            StepKind.SHAKE_DOWN,
            StepKind.RECHECK,
            StepKind.CONFIRM_MOTO,
            StepKind.CONFIRM);
    int last = -1;
    for (StepKind kind : order) {
      if (kinds.contains(kind)) {
        assertThat(kinds.indexOf(kind)).as("%s in %s", kind, kinds).isGreaterThan(last);
        last = kinds.lastIndexOf(kind);
      }
    }
    List<Integer> clickers =
        plan.steps().stream()
            .filter(step -> step.kind() == StepKind.PLACE_CLICKER)
            .map(step -> TradeOrder.rank(step.setting().orElseThrow().role()))
            .toList();
    assertThat(clickers).isSorted();
  }

  @Property(tries = 300, seed = "15")
  void oneLegIsDoneCompletelyBeforeTheOther(@ForAll("jobs") PlanFrom from) {
    List<Side> legs =
        Planner.plan(from, Advisor.SILENT).steps().stream()
            .filter(step -> step.place() == Place.BENCH && step.leg().isPresent())
            .map(step -> step.leg().get())
            .toList();
    List<Side> sorted = legs.stream().sorted().collect(Collectors.toList());
    assertThat(legs).isEqualTo(sorted);
  }

  @Property(tries = 300, seed = "16")
  void aSettingIsOnlyTouchedOnALegThatCarriesIt(@ForAll("jobs") PlanFrom from) {
    for (Step step : Planner.plan(from, Advisor.SILENT).steps()) {
      if (step.setting().isPresent() && step.leg().isPresent()) {
        assertThat(Drafting.carries(step.setting().get(), step.leg().get()))
            .as(step.id().text())
            .isTrue();
      }
    }
  }

  @Property(tries = 300, seed = "17")
  void planningAgainAfterAnySubsetOfEntriesKeepsTheSteps(
      @ForAll("jobs") PlanFrom from, @ForAll long seed) {
    Random random = new Random(seed);
    Plan plan = Planner.plan(from, Advisor.SILENT);
    List<StepDone> done = new ArrayList<>();
    for (Step step : plan.steps()) {
      if (random.nextBoolean()) {
        done.add(
            random.nextInt(5) == 0
                ? Jobs.skipped(step.id().text(), "no time")
                : Jobs.asItShould(step));
      }
    }
    Collections.shuffle(done, random);
    Plan again = Jobs.plan(from, done.toArray(new StepDone[0]));
    assertThat(Jobs.ids(again)).isEqualTo(Jobs.ids(plan));
    for (StepDone each : done) {
      assertThat(again.done(each.step())).contains(each);
    }
  }

  @Property(tries = 200, seed = "18")
  void theOrderOfSettingsOnTheSheetDoesNotChangeWhatIsDone(
      @ForAll("jobs") PlanFrom from, @ForAll long seed) {
    List<Setting> shuffled = new ArrayList<>(from.sheet().settings());
    Collections.shuffle(shuffled, new Random(seed));
    PlanFrom other =
        new PlanFrom(from.sheet().withSettings(shuffled), from.baseline(), from.job(), List.of());
    assertThat(new HashSet<>(Jobs.ids(Planner.plan(other, Advisor.SILENT))))
        .isEqualTo(new HashSet<>(Jobs.ids(Planner.plan(from, Advisor.SILENT))));
  }

  @Property(tries = 200, seed = "19")
  void aSheetWithoutTorquesSaysSoAtEveryBolt(@ForAll("jobs") PlanFrom from) {
    PlanFrom bare =
        new PlanFrom(from.sheet().withTorques(List.of()), from.baseline(), from.job(), List.of());
    for (Step step : Planner.plan(bare, Advisor.SILENT).steps()) {
      if (step.kind().doneWhen() == DoneWhen.TO_TORQUE) {
        assertThat(step.cautions()).contains(Caution.TORQUE_NOT_ON_SHEET);
      }
    }
    assertThat(bare.sheet().torques(Fastener.AXLE_NUT)).isEmpty();
  }

  @Property(tries = 300, seed = "20")
  void aReturnVisitsEverySettingOnceInItsOrder(@ForAll("jobs") PlanFrom from) {
    ReturnToBaseline back =
        ReturnToBaseline.of(
            from.sheet(), from.baseline().setup(), from.job().before(), Advisor.SILENT);
    List<Integer> moves =
        back.items().stream()
            .filter(item -> item.action() == ReturnItem.Action.MOVE)
            .map(item -> TradeOrder.rank(item.what().setting().role()))
            .toList();
    assertThat(moves).isSorted();
    long firstOthers =
        back.items().stream()
            .takeWhile(item -> item.action() == ReturnItem.Action.PUT_RIGHT)
            .count();
    assertThat(back.items().stream().skip(firstOthers))
        .noneMatch(item -> item.action() == ReturnItem.Action.PUT_RIGHT);
    Set<ReturnItem> walked = new HashSet<>();
    back.oneAtATime(ReturnOrder.TRADE).forEach(stage -> walked.addAll(stage.items()));
    assertThat(walked).isEqualTo(new HashSet<>(back.items()));
  }
}
