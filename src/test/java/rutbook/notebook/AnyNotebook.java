package rutbook.notebook;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import rutbook.units.Amount;
import rutbook.units.Angle;
import rutbook.units.Dimension;
import rutbook.units.Display;
import rutbook.units.KinematicViscosity;
import rutbook.units.Length;
import rutbook.units.Mass;
import rutbook.units.Pressure;
import rutbook.units.SpringRate;
import rutbook.units.Temperature;
import rutbook.units.Unit;
import rutbook.units.Volume;

/**
 * Random notebooks with every kind of entry: what may be left out is left out half the time, or
 * never, so that every field there is can be seen.
 */
public final class AnyNotebook {
  private static final String[] TEXTS = {
    "plain",
    "Ärger mit “Ölstand” → ½",
    "two\nlines\tand a tab",
    "\uD83C\uDFCD bike",
    "\uD800 half",
    "<b>&amp;</b> \\ \" / {0} %s",
    "x".repeat(500),
    "עברית and back"
  };
  private static final String[] NAMES = {"Imke", "O’Ring & Söhne", "\"q\" \\ {1}", "n".repeat(120)};

  private final Random random;
  private final boolean whole;
  private int number;

  private AnyNotebook(Random random, boolean whole) {
    this.random = random;
    this.whole = whole;
  }

  /** A random notebook, the same for the same seed. */
  public static Notebook of(long seed) {
    return new AnyNotebook(new Random(seed), false).notebook();
  }

  /** One with every field that a notebook can have. */
  public static Notebook whole() {
    return new AnyNotebook(new Random(1), true).notebook();
  }

  private Notebook notebook() {
    Sheet first = sheet(Bench.SPRING);
    List<Sheet> sheets = new ArrayList<>(List.of(first));
    if (!rarely()) {
      sheets.add(first.with(LocalDate.of(2026, 8, 1), text()));
    }
    Shelf shelf =
        new Shelf(
            List.of(new Rider(Bench.RIDER, name(), weights())),
            List.of(new Bike(Bench.BIKE, name(), sheets)),
            List.of(
                new Track(
                    Bench.HOLLOW, name(), maybe(() -> any(Ground.class)), altitude(), text())),
            List.of(oil()));
    List<Entry> entries = new ArrayList<>(entries(first));
    List<RuleChange> changes = new ArrayList<>();
    for (int i = 0; i < some(3); i++) {
      changes.add(new RuleChange("rule-" + i, decimal("-4.5", "0.25", "1E+0", "0.000001"), name()));
    }
    return Notebook.of(
        new NotebookId("any-" + random.nextInt(100)), shelf, entries, changes, display());
  }

  private List<Entry> entries(Sheet sheet) {
    List<Entry> entries = new ArrayList<>();
    entries.add(
        new Entry.Baseline(
            Head.of(Bench.FIRST_BASELINE, Bench.BIKE, Bench.SPRING, 0),
            setup(sheet),
            maybe(() -> length()),
            maybe(() -> length()),
            text(),
            Optional.empty()));
    int rounds = whole ? 1 : 1 + random.nextInt(3);
    for (int i = 0; i < rounds; i++) {
      entries.add(session(sheet));
      entries.add(new Entry.Adjusted(head(), changes(sheet)));
      entries.add(sag());
      Entry.RebuildJob job = rebuild(sheet);
      entries.add(job);
      entries.add(
          new Entry.Baseline(
              head(),
              setup(sheet),
              maybe(() -> length()),
              maybe(() -> length()),
              text(),
              maybe(job::id)));
      entries.add(new Entry.MeterChange(head(), hours(), hours()));
      entries.add(
          new Entry.Event(
              head(),
              any(EventKind.class),
              maybe(() -> any(End.class)),
              maybe(() -> any(FaultSeen.class)),
              text()));
      entries.add(new Entry.Serviced(head(), List.of(new ServiceId("fork-oil")), text()));
      entries.add(new Entry.GateDismissed(head(), any(Gate.class), name()));
      entries.add(
          new Entry.HandedOver(
              head(),
              new HandOverId(id("h")),
              new Snapshot(setup(sheet), Bench.SPRING, several(Shared.class)),
              "5f".repeat(32)));
      entries.add(new Entry.Advice(head(), source(true), proposals(sheet), text()));
      entries.add(new Entry.Advice(head(), source(false), proposals(sheet), text()));
    }
    return entries;
  }

  private Entry.Session session(Sheet sheet) {
    List<Moto> motos = new ArrayList<>();
    for (int i = 0; i < some(3); i++) {
      motos.add(
          new Moto(
              new MotoId(id("m")),
              any(MotoKind.class),
              changes(sheet),
              rarely() ? Report.EMPTY : report(),
              maybe(this::conditions),
              text()));
    }
    Optional<EndOfDayCheck> check =
        maybe(
            () ->
                new EndOfDayCheck(
                    sheet.settings().stream()
                        .filter(setting -> !rarely())
                        .map(setting -> new EndOfDayCheck.Found(setting.id(), found(setting)))
                        .toList()));
    return new Entry.Session(
        head(), Bench.HOLLOW, Bench.RIDER, conditions(), setup(sheet), motos, check);
  }

  private Report report() {
    List<Lap> laps = new ArrayList<>();
    for (int i = 0; i < some(4); i++) {
      long millis = 1 + random.nextInt((int) Lap.LONGEST_MILLIS);
      laps.add(new Lap(millis, i == 0 ? Optional.of(text()) : Optional.empty()));
    }
    List<Feel> feel = new ArrayList<>();
    for (Symptom symptom : Symptom.values()) {
      if (whole || random.nextInt(5) == 0) {
        feel.add(
            new Feel(
                any(End.class),
                any(Section.class),
                symptom,
                random.nextInt(6),
                maybe(() -> any(Bite.class)),
                maybe(() -> any(When.class))));
      }
    }
    OptionalInt trust = rarely() ? OptionalInt.empty() : OptionalInt.of(1 + random.nextInt(10));
    TravelUsed travel = new TravelUsed(maybe(this::length), maybe(this::length));
    return new Report(laps, trust, feel, travel, whole || random.nextBoolean());
  }

  private Conditions conditions() {
    return new Conditions(
        maybe(() -> any(Ground.class)),
        maybe(() -> any(Moisture.class)),
        rarely() ? OptionalInt.empty() : OptionalInt.of(random.nextInt(6)),
        maybe(() -> Amount.of(random.nextInt(60) - 20, any(Temperature.class))),
        several(Ready.class));
  }

  private Entry.SagMeasured sag() {
    return new Entry.SagMeasured(
        head(),
        any(End.class),
        Optional.of(length()),
        maybe(this::length),
        maybe(() -> new SagLengths(length(), length(), length())),
        maybe(this::mass),
        maybe(() -> Amount.of(random.nextInt(9), Volume.LITRE)));
  }

  private Entry.RebuildJob rebuild(Sheet sheet) {
    List<StepDone> done = new ArrayList<>();
    done.add(step("count:fork-rebound", new Entered.Counted(clicks(Bench.FORK_REBOUND, sheet))));
    Setting oil = sheet.setting(Bench.FORK_OIL).orElseThrow();
    done.add(
        new StepDone(
            StepId.placing(Bench.FORK_OIL),
            moment(),
            new Entered.Measured(found(oil), maybe(() -> any(Instrument.class)))));
    done.add(step("drain", new Entered.Ticked()));
    done.add(step("shop-return", new Entered.Ticked(text())));
    done.add(step("fit-seals", new Entered.Skipped(name())));
    Job job =
        new Job(
            any(Scope.class),
            several(Renewed.class),
            Bench.FIRST_BASELINE,
            setup(sheet),
            Bench.SPRING,
            maybe(() -> new OilId("oil-1")));
    return new Entry.RebuildJob(head(), job, done, any(Outcome.class));
  }

  private Reading clicks(SettingId id, Sheet sheet) {
    return found(sheet.setting(id).orElseThrow());
  }

  private StepDone step(String id, Entered entered) {
    return new StepDone(
        new StepId(id),
        moment(),
        entered,
        maybe(() -> LocalDate.of(2026, 5, 1 + random.nextInt(28))));
  }

  private Instant moment() {
    return Instant.ofEpochSecond(1_780_000_000L + random.nextInt(9_000_000), random.nextInt(2) * 7);
  }

  private Source source(boolean coach) {
    return coach ? new Source.Coach(new HandOverId(id("h")), name()) : new Source.Own(name());
  }

  private List<Proposal> proposals(Sheet sheet) {
    List<Answer> answers =
        List.of(
            new Answer.Open(),
            new Answer.Accepted(new MotoId("m-1")),
            new Answer.Kept(new MotoId("m-1")),
            new Answer.PutBack(new MotoId("m-1")),
            new Answer.Declined(text()),
            new Answer.Held(Bench.ml("380")));
    List<Proposal> proposals = new ArrayList<>();
    for (Answer answer : answers) {
      Setting setting = sheet.settings().get(random.nextInt(sheet.settings().size()));
      proposals.add(
          new Proposal(
              new ProposalId(id("p")),
              setting.id(),
              found(setting),
              set(sheet, setting),
              text(),
              rarely() ? OptionalDouble.empty() : OptionalDouble.of(random.nextInt(101) / 100.0),
              answer));
    }
    return proposals;
  }

  private List<Change> changes(Sheet sheet) {
    List<Change> changes = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      if (whole || random.nextInt(6) == 0) {
        Optional<ProposalId> proposal = maybe(() -> new ProposalId(id("p")));
        changes.add(new Change(setting.id(), set(sheet, setting), proposal, text()));
      }
    }
    return changes;
  }

  private Setup setup(Sheet sheet) {
    List<Placed> placed = new ArrayList<>();
    for (int i = 0; i < sheet.settings().size(); i++) {
      Setting setting = sheet.settings().get(i);
      placed.add(
          i % 3 == 0
              ? Placed.found(setting.id(), found(setting))
              : Placed.set(setting.id(), set(sheet, setting)));
    }
    return new Setup(placed);
  }

  /** A reading inside the limits and on the steps. */
  private Reading set(Sheet sheet, Setting setting) {
    Range limits = sheet.limits(setting);
    BigDecimal step = setting.scale().step().value();
    int steps =
        limits
            .most()
            .value()
            .subtract(limits.least().value())
            .divideToIntegralValue(step)
            .intValue();
    Supplier<Amount> amount =
        () ->
            limits
                .least()
                .withValue(
                    limits
                        .least()
                        .value()
                        .add(step.multiply(BigDecimal.valueOf(random.nextInt(steps + 1)))));
    return setting.carrier() == Carrier.PAIR
        ? Reading.of(amount.get(), amount.get())
        : Reading.of(amount.get());
  }

  /** Any reading of the right kind, in any unit, sometimes unknown. */
  private Reading found(Setting setting) {
    List<Unit> units = Unit.of(setting.dimension());
    Supplier<Value> value =
        () ->
            random.nextInt(4) == 0
                ? new Value.Unknown(any(WhyUnknown.class))
                : Value.of(
                    Amount.of(
                        new BigDecimal(random.nextInt(2000) - 200).movePointLeft(1).toPlainString(),
                        units.get(random.nextInt(units.size()))));
    return setting.carrier() == Carrier.PAIR
        ? new Reading.Pair(value.get(), value.get())
        : new Reading.One(value.get());
  }

  private Sheet sheet(LocalDate from) {
    Sheet bench = Bench.sheet();
    List<Setting> settings = new ArrayList<>(bench.settings());
    Setting first = settings.get(0);
    Scale scale = first.scale();
    settings.set(
        0,
        new Setting(
            first.id(),
            first.name(),
            first.role(),
            first.carrier(),
            new Scale(
                scale.limits(),
                maybe(() -> ((Limits.Stops) scale.limits()).range()),
                scale.step(),
                scale.datum(),
                scale.greater(),
                scale.total()),
            first.work()));
    List<Chamber> chambers = new ArrayList<>();
    for (Chamber each : bench.chambers()) {
      chambers.add(
          new Chamber(
              each.id(),
              each.name(),
              each.carrier(),
              each.measure(),
              each.limits(),
              each.nominal(),
              maybe(() -> new ChamberVolume(Bench.ml("900.5"), random.nextBoolean()))));
    }
    return new Sheet(
        from,
        text(),
        settings,
        chambers,
        new Parts(fork(), shock(), geometry(), bench.parts().sag()),
        bench.torques(),
        bench.services(),
        maybe(() -> any(Side.class)));
  }

  private ForkParts fork() {
    return new ForkParts(
        any(ForkKind.class),
        maybe(this::length),
        maybe(this::length),
        maybe(this::length),
        maybe(this::length),
        maybe(() -> Bench.ml("88")),
        maybe(() -> new AirLeg(length(), Bench.ml("300"), Bench.ml("45.5"))),
        text());
  }

  private ShockParts shock() {
    return new ShockParts(
        maybe(this::length),
        maybe(
            () ->
                new MotionRatio(
                    decimal("0.360", "2.75", "0.123456789012", "1E+1"),
                    any(RatioConvention.class))),
        maybe(this::length),
        maybe(this::length),
        List.of(Amount.of("48.5", SpringRate.NEWTON_PER_MILLIMETRE)),
        random.nextBoolean(),
        text(),
        maybe(() -> new Range(Amount.of("9.5", Pressure.BAR), Amount.of("150", Pressure.PSI))));
  }

  private Geometry geometry() {
    return new Geometry(
        maybe(() -> Amount.of("27.2", Angle.DEGREE)),
        maybe(this::length),
        maybe(this::length),
        maybe(this::length),
        maybe(this::length));
  }

  private Oil oil() {
    return new Oil(
        new OilId("oil-1"),
        name(),
        maybe(() -> Amount.of("15.9", KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND)),
        maybe(() -> Amount.of("3.6", KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND)));
  }

  private Display display() {
    Display display = random.nextBoolean() ? Display.METRIC : Display.US;
    List<Unit> lengths = Unit.of(Dimension.LENGTH);
    return display.with(lengths.get(random.nextInt(lengths.size())));
  }

  private List<Rider.Weight> weights() {
    return List.of(
        new Rider.Weight(Bench.SPRING, mass()),
        new Rider.Weight(Bench.SPRING.plusDays(random.nextInt(90) + 1), mass()));
  }

  private Head head() {
    number++;
    LocalDate day = Bench.SPRING.plusDays(random.nextInt(150));
    return new Head(
        new EntryId("any:" + number),
        Bench.BIKE,
        day,
        whole ? number : random.nextInt(4),
        maybe(() -> LocalTime.of(random.nextInt(24), random.nextInt(60), random.nextInt(2) * 5)),
        maybe(this::hours),
        text());
  }

  private Optional<Amount> altitude() {
    return maybe(() -> Amount.of(random.nextInt(2000) - 100, Length.METRE));
  }

  private Amount hours() {
    return Bench.hours(random.nextInt(1000) + "." + random.nextInt(10));
  }

  private Amount mass() {
    return Amount.of(50 + random.nextInt(100), any(Mass.class));
  }

  private Amount length() {
    return Amount.of(
        new BigDecimal(1 + random.nextInt(4000)).movePointLeft(2).toPlainString(),
        any(Length.class));
  }

  private BigDecimal decimal(String... choices) {
    return new BigDecimal(choices[random.nextInt(choices.length)]);
  }

  private String id(String start) {
    number++;
    return start + "-" + number;
  }

  private String text() {
    return rarely() ? "" : TEXTS[random.nextInt(TEXTS.length)];
  }

  private String name() {
    return NAMES[random.nextInt(NAMES.length)];
  }

  private int some(int most) {
    return whole ? most : random.nextInt(most + 1);
  }

  private boolean rarely() {
    return !whole && random.nextInt(4) == 0;
  }

  private <T> Optional<T> maybe(Supplier<T> thing) {
    return whole || random.nextBoolean() ? Optional.of(thing.get()) : Optional.empty();
  }

  private <E extends Enum<E>> E any(Class<E> type) {
    E[] all = type.getEnumConstants();
    return all[random.nextInt(all.length)];
  }

  private <E extends Enum<E>> Set<E> several(Class<E> type) {
    Set<E> chosen = new LinkedHashSet<>();
    for (E each : type.getEnumConstants()) {
      if (whole || random.nextBoolean()) {
        chosen.add(each);
      }
    }
    return chosen;
  }
}
