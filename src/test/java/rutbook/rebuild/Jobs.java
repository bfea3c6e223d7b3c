package rutbook.rebuild;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Chamber;
import rutbook.notebook.Datum;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.Fastener;
import rutbook.notebook.ForkKind;
import rutbook.notebook.ForkParts;
import rutbook.notebook.Job;
import rutbook.notebook.Limits;
import rutbook.notebook.Measure;
import rutbook.notebook.Parts;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.Scale;
import rutbook.notebook.Scope;
import rutbook.notebook.Sense;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Tightening;
import rutbook.notebook.Work;
import rutbook.units.Amount;
import rutbook.units.Pressure;
import rutbook.units.Torque;

/** Jobs, sheets and entries that the tests of this package share. */
public final class Jobs {
  static final Instant NOON = Instant.parse("2026-05-03T12:00:00Z");
  public static final SettingId FORK_AIR = new SettingId("fork-air");

  private Jobs() {}

  static PlanFrom from(Sheet sheet, Setup baseline, Setup before, Scope scope, Renewed... renewed) {
    Job job =
        new Job(
            scope, Set.of(renewed), Bench.FIRST_BASELINE, before, sheet.from(), Optional.empty());
    return new PlanFrom(sheet, Bench.baseline(baseline), job, List.of());
  }

  static PlanFrom from(Scope scope, Renewed... renewed) {
    return from(Bench.sheet(), Bench.setup(), Bench.setup(), scope, renewed);
  }

  static Plan plan(Scope scope, Renewed... renewed) {
    return Planner.plan(from(scope, renewed), Advisor.SILENT);
  }

  static Plan plan(PlanFrom from, StepDone... done) {
    return Planner.plan(
        new PlanFrom(from.sheet(), from.baseline(), from.job(), Arrays.asList(done)),
        Advisor.SILENT);
  }

  static StepDone ticked(String step) {
    return new StepDone(new StepId(step), NOON, new Entered.Ticked());
  }

  static StepDone skipped(String step, String why) {
    return new StepDone(new StepId(step), NOON, new Entered.Skipped(why));
  }

  static StepDone counted(String step, Reading reading) {
    return new StepDone(new StepId(step), NOON, new Entered.Counted(reading));
  }

  static StepDone measured(String step, Reading reading) {
    return new StepDone(new StepId(step), NOON, new Entered.Measured(reading, Optional.empty()));
  }

  /** The entry that answers a step as it should be answered. */
  static StepDone asItShould(Step step) {
    Entered entered = new Entered.Ticked();
    if (step.ask().form() != Ask.Form.TICK) {
      Amount amount =
          step.goal()
              .wish()
              .map(Range::least)
              .orElseGet(() -> Amount.of(1, step.ask().unit().orElseThrow()));
      Reading any = step.ask().bothLegs() ? Reading.bothLegs(amount) : Reading.of(amount);
      Reading reading =
          step.kind() == StepKind.TOTAL
              ? step.goal().total().map(Reading::of).orElse(any)
              : step.target().map(Target::reading).or(() -> step.goal().noted()).orElse(any);
      entered =
          step.ask().form() == Ask.Form.COUNT
              ? new Entered.Counted(reading)
              : new Entered.Measured(reading, Optional.empty());
    }
    return new StepDone(step.id(), NOON, entered);
  }

  static List<String> ids(List<Step> steps) {
    return steps.stream().map(step -> step.id().text()).toList();
  }

  static List<String> ids(Plan plan) {
    return ids(plan.steps());
  }

  /** The sheet with another kind of fork. */
  static Sheet withFork(Sheet sheet, ForkKind kind) {
    Parts parts = sheet.parts();
    return sheet.withParts(
        new Parts(ForkParts.of(kind), parts.shock(), parts.geometry(), parts.sag()));
  }

  static Sheet without(Sheet sheet, SettingId... ids) {
    List<SettingId> gone = Arrays.asList(ids);
    return sheet.withSettings(
        sheet.settings().stream().filter(each -> !gone.contains(each.id())).toList());
  }

  static Sheet replacing(Sheet sheet, Setting changed) {
    List<Setting> next = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      next.add(setting.id().equals(changed.id()) ? changed : setting);
    }
    return sheet.withSettings(next);
  }

  static Setting in(Setting setting, Carrier carrier) {
    return new Setting(
        setting.id(), setting.name(), setting.role(), carrier, setting.scale(), setting.work());
  }

  /** Compression in the left leg only, rebound in the right leg only; spring and oil in both. */
  static Sheet split() {
    Sheet sheet = without(withFork(Bench.sheet(), ForkKind.OPEN_BATH), Bench.CARTRIDGE_OIL);
    Sheet left =
        replacing(sheet, in(sheet.setting(Bench.FORK_COMPRESSION).orElseThrow(), Carrier.LEFT));
    return replacing(left, in(sheet.setting(Bench.FORK_REBOUND).orElseThrow(), Carrier.RIGHT));
  }

  static Setup splitSetup() {
    Setup setup =
        new Setup(
            Bench.setup().placed().stream()
                .filter(each -> !each.setting().equals(Bench.CARTRIDGE_OIL))
                .toList());
    return setup
        .with(Placed.set(Bench.FORK_COMPRESSION, Reading.of(Bench.clicks(12))))
        .with(Placed.set(Bench.FORK_REBOUND, Reading.of(Bench.clicks(11))));
  }

  static Amount bar(String number) {
    return Amount.of(number, Pressure.BAR);
  }

  /** An air spring in the left leg. */
  public static Sheet air() {
    Sheet sheet =
        without(withFork(Bench.sheet(), ForkKind.AIR), Bench.FORK_SPRING, Bench.CARTRIDGE_OIL);
    List<Setting> settings = new ArrayList<>(sheet.settings());
    settings.add(
        new Setting(
            FORK_AIR,
            "Fork air",
            Role.FORK_AIR,
            Carrier.LEFT,
            new Scale(
                Limits.stops(bar("8"), bar("12")),
                Optional.empty(),
                bar("0.1"),
                Datum.ABSOLUTE,
                Sense.FIRMER,
                OptionalInt.empty()),
            Work.PADDOCK));
    return sheet.withSettings(settings);
  }

  public static Setup airSetup() {
    return Bench.setup().with(Placed.set(FORK_AIR, Reading.of(bar("10"))));
  }

  static Amount poundFeet(String number) {
    return Amount.of(number, Torque.POUND_FORCE_FOOT);
  }

  /** Common practice, no source: a fork with 8.3 fl oz in the cartridge, 10 to 13 outside. */
  static Sheet american() {
    List<Chamber> chambers =
        List.of(
            new Chamber(
                Bench.INNER,
                "Cartridge",
                Carrier.PAIR,
                Measure.VOLUME,
                new Range(Bench.floz("8.1"), Bench.floz("8.5")),
                Optional.of(Bench.floz("8.3")),
                Optional.empty()),
            new Chamber(
                Bench.OUTER,
                "Outer chamber",
                Carrier.PAIR,
                Measure.VOLUME,
                new Range(Bench.floz("10"), Bench.floz("13")),
                Optional.empty(),
                Optional.empty()));
    return Bench.sheet()
        .withChambers(chambers)
        .withTorques(
            List.of(
                torque(Fastener.REBOUND_ADJUSTER_LOCK_NUT, "16"),
                torque(Fastener.CENTRE_BOLT, "51"),
                torque(Fastener.LOWER_CLAMP, "15"),
                torque(Fastener.UPPER_CLAMP, "15"),
                torque(Fastener.AXLE_PINCH_BOLTS, "15"),
                torque(Fastener.BRAKE_CALIPER, "22"),
                torque(Fastener.AXLE_NUT, "65")));
  }

  private static Tightening torque(Fastener fastener, String number) {
    return new Tightening(fastener, fastener.name(), poundFeet(number), "common practice");
  }

  /** The bench's setup with these fluid ounces in the outer chambers. */
  static Setup outer(String fluidOunces) {
    return Bench.setup()
        .with(Placed.found(Bench.CARTRIDGE_OIL, Reading.bothLegs(Bench.floz("8.3"))))
        .with(Placed.found(Bench.FORK_OIL, Reading.bothLegs(Bench.floz(fluidOunces))));
  }

  static Setup with(Setup setup, SettingId id, Reading reading) {
    return setup.with(Placed.found(id, reading));
  }

  static Entry.RebuildJob entry(PlanFrom from, List<StepDone> done) {
    return new Entry.RebuildJob(
        rutbook.notebook.Head.of(
            new rutbook.notebook.EntryId("job-1"), Bench.BIKE, Bench.SPRING.plusDays(60), 0),
        from.job(),
        done,
        rutbook.notebook.Outcome.UNDER_WAY);
  }

  static BigDecimal number(String text) {
    return new BigDecimal(text);
  }
}
