package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.hours;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import rutbook.units.Amount;
import rutbook.units.KinematicViscosity;
import rutbook.units.Mass;
import rutbook.units.Temperature;
import rutbook.units.Torque;
import rutbook.units.Volume;

/** What no value of the notebook takes, each at the last number that it does take. */
class RefusedValuesTest {
  private static final Optional<Amount> NONE = Optional.empty();
  private static final LocalDate DAY = LocalDate.of(2026, 4, 4);

  private static void refused(Fault fault, ThrowingCallable made) {
    assertThatThrownBy(made)
        .isInstanceOfSatisfying(
            NotebookException.class, refusal -> assertThat(refusal.fault()).isEqualTo(fault));
  }

  private static void taken(ThrowingCallable made) {
    assertThatCode(made).doesNotThrowAnyException();
  }

  private static Head head(LocalDate day, int order, Optional<Amount> meter) {
    return new Head(new EntryId("e"), Bench.BIKE, day, order, Optional.empty(), meter, "");
  }

  @Test
  void names() {
    String longest = "x".repeat(120);
    assertThat(new Track(Bench.HOLLOW, "  Hollow ", Optional.empty(), NONE, "").name())
        .isEqualTo("Hollow");
    taken(() -> Checks.name("name", longest));
    refused(Fault.TEXT_TOO_LONG, () -> Checks.name("name", longest + "x"));
    refused(Fault.EMPTY, () -> Checks.name("name", "  "));
    refused(Fault.BAD_NAME, () -> Checks.name("name", "a\u0007b"));
    String note = "n".repeat(20_000);
    assertThat(Checks.note("note", note)).isEqualTo(note);
    refused(Fault.TEXT_TOO_LONG, () -> Checks.note("note", note + "n"));
    refused(
        Fault.TEXT_TOO_LONG,
        () -> new Track(Bench.HOLLOW, "Hollow", Optional.empty(), NONE, note + "n"));
  }

  @Test
  void ids() {
    taken(() -> new EntryId("a".repeat(80)));
    refused(Fault.BAD_ID, () -> new EntryId("a".repeat(81)));
    refused(Fault.BAD_ID, () -> new EntryId(""));
    taken(() -> new EntryId("azAZ09.:_-"));
    for (String first : List.of("a", "z", "A", "Z", "0", "9")) {
      taken(() -> new EntryId(first));
    }
    for (String bad : List.of("-a", "a b", "a/b", "`", "{", "@", "[", "/", ":", "ä")) {
      refused(Fault.BAD_ID, () -> new EntryId(bad));
    }
    taken(() -> new StepId("x".repeat(120)));
    refused(Fault.BAD_ID, () -> new StepId("x".repeat(121)));
  }

  @Test
  void daysAndPlacesInThem() {
    taken(() -> head(LocalDate.of(1970, 1, 1), 0, NONE));
    refused(Fault.BAD_DAY, () -> head(LocalDate.of(1969, 12, 31), 0, NONE));
    taken(() -> head(LocalDate.of(2199, 12, 31), 10_000, NONE));
    refused(Fault.BAD_DAY, () -> head(LocalDate.of(2200, 1, 1), 0, NONE));
    refused(Fault.OUT_OF_RANGE, () -> head(DAY, -1, NONE));
    refused(Fault.OUT_OF_RANGE, () -> head(DAY, 10_001, NONE));
    refused(Fault.BAD_DAY, () -> new Snapshot(Setup.EMPTY, LocalDate.of(1900, 1, 1), Set.of()));
    refused(Fault.BAD_DAY, () -> Bench.sheet().with(LocalDate.of(1900, 1, 1), ""));
  }

  @Test
  void meters() {
    taken(() -> head(DAY, 0, Optional.of(hours("100000"))));
    refused(Fault.OUT_OF_RANGE, () -> head(DAY, 0, Optional.of(hours("100000.1"))));
    refused(Fault.OUT_OF_RANGE, () -> head(DAY, 0, Optional.of(hours("-1"))));
    refused(Fault.WRONG_UNIT, () -> head(DAY, 0, Optional.of(mm("1"))));
    refused(
        Fault.OUT_OF_RANGE,
        () -> new Entry.MeterChange(head(DAY, 0, NONE), hours("1"), hours("-1")));
    refused(Fault.WRONG_UNIT, () -> new Entry.MeterChange(head(DAY, 0, NONE), mm("1"), hours("1")));
  }

  @Test
  void ratings() {
    for (int severity = 0; severity <= 5; severity++) {
      int each = severity;
      taken(() -> Feel.of(End.FRONT, Section.RUTS, Symptom.HARSH, each));
    }
    refused(Fault.OUT_OF_RANGE, () -> Feel.of(End.FRONT, Section.RUTS, Symptom.HARSH, 6));
    refused(Fault.OUT_OF_RANGE, () -> Feel.of(End.FRONT, Section.RUTS, Symptom.HARSH, -1));
    taken(() -> Report.EMPTY.withTrust(OptionalInt.of(10)));
    refused(Fault.OUT_OF_RANGE, () -> Report.EMPTY.withTrust(OptionalInt.of(11)));
    refused(Fault.OUT_OF_RANGE, () -> Report.EMPTY.withTrust(OptionalInt.of(0)));
    refused(Fault.OUT_OF_RANGE, () -> conditions(OptionalInt.of(6), NONE));
    refused(Fault.WRONG_UNIT, () -> conditions(OptionalInt.of(5), Optional.of(mm("1"))));
    taken(() -> conditions(OptionalInt.of(0), Optional.of(Amount.of(-5, Temperature.CELSIUS))));
  }

  private static Conditions conditions(OptionalInt roughness, Optional<Amount> air) {
    return new Conditions(Optional.empty(), Optional.empty(), roughness, air, Set.of());
  }

  @Test
  void laps() {
    taken(() -> Lap.of(1));
    taken(() -> Lap.of(86_400_000));
    refused(Fault.OUT_OF_RANGE, () -> Lap.of(0));
    refused(Fault.OUT_OF_RANGE, () -> Lap.of(86_400_001));
    List<Lap> many = Collections.nCopies(1000, Lap.of(60_000));
    taken(() -> Report.EMPTY.withLaps(many));
    refused(Fault.TOO_MANY, () -> Report.EMPTY.withLaps(Collections.nCopies(1001, Lap.of(60_000))));
    assertThat(Lap.of(60_000).counts()).isTrue();
    assertThat(new Lap(60_000, Optional.of("fell")).counts()).isFalse();
    refused(Fault.TEXT_TOO_LONG, () -> new Lap(60_000, Optional.of("n".repeat(20_001))));
  }

  @Test
  void sag() {
    taken(() -> sag(Optional.of(mm("104")), NONE, NONE));
    taken(() -> sag(NONE, Optional.of(mm("-2")), NONE));
    refused(Fault.EMPTY, () -> sag(NONE, NONE, NONE));
    refused(Fault.WRONG_UNIT, () -> sag(Optional.of(ml("104")), NONE, NONE));
    refused(Fault.WRONG_UNIT, () -> sag(NONE, Optional.of(ml("104")), NONE));
    refused(
        Fault.OUT_OF_RANGE,
        () -> sag(Optional.of(mm("104")), NONE, Optional.of(Amount.of(0, Mass.KILOGRAM))));
    refused(Fault.OUT_OF_RANGE, () -> new SagLengths(mm("0"), mm("500"), mm("500")));
    refused(Fault.OUT_OF_RANGE, () -> new SagLengths(mm("500"), mm("0"), mm("500")));
    refused(Fault.OUT_OF_RANGE, () -> new SagLengths(mm("500"), mm("500"), mm("0")));
  }

  private static Entry sag(Optional<Amount> race, Optional<Amount> free, Optional<Amount> weight) {
    return new Entry.SagMeasured(
        head(DAY, 0, NONE), End.REAR, race, free, Optional.empty(), weight, NONE);
  }

  @Test
  void measuresOfTheBike() {
    Optional<Amount> nothing = Optional.of(mm("0"));
    refused(Fault.OUT_OF_RANGE, () -> fork(nothing, NONE, NONE, NONE, NONE));
    refused(Fault.OUT_OF_RANGE, () -> fork(NONE, nothing, NONE, NONE, NONE));
    refused(Fault.OUT_OF_RANGE, () -> fork(NONE, NONE, nothing, NONE, NONE));
    refused(Fault.OUT_OF_RANGE, () -> fork(NONE, NONE, NONE, nothing, NONE));
    refused(Fault.WRONG_UNIT, () -> fork(NONE, NONE, NONE, NONE, Optional.of(mm("1"))));
    refused(Fault.OUT_OF_RANGE, () -> new Geometry(NONE, NONE, nothing, NONE, NONE));
    refused(Fault.OUT_OF_RANGE, () -> new Geometry(NONE, NONE, NONE, nothing, NONE));
    refused(Fault.OUT_OF_RANGE, () -> new Geometry(NONE, NONE, NONE, NONE, nothing));
    refused(Fault.WRONG_UNIT, () -> new Geometry(Optional.of(mm("1")), NONE, NONE, NONE, NONE));
    refused(Fault.WRONG_UNIT, () -> new Geometry(NONE, Optional.of(ml("1")), NONE, NONE, NONE));
    taken(() -> new Geometry(NONE, Optional.of(mm("-1")), NONE, NONE, NONE));
    refused(Fault.OUT_OF_RANGE, () -> new AirLeg(mm("0"), ml("1"), ml("1")));
    refused(Fault.OUT_OF_RANGE, () -> new AirLeg(mm("1"), ml("0"), ml("1")));
    refused(Fault.OUT_OF_RANGE, () -> new AirLeg(mm("1"), ml("1"), ml("0")));
    refused(Fault.OUT_OF_RANGE, () -> new ChamberVolume(ml("0"), true));
    refused(
        Fault.WRONG_UNIT,
        () ->
            new SagWindows(
                Optional.empty(), Optional.empty(), Optional.of(new Range(ml("1"), ml("2")))));
    refused(Fault.WRONG_UNIT, () -> new TravelUsed(Optional.of(ml("1")), NONE));
    refused(Fault.WRONG_UNIT, () -> new TravelUsed(NONE, Optional.of(ml("1"))));
  }

  private static ForkParts fork(
      Optional<Amount> travel,
      Optional<Amount> seal,
      Optional<Amount> bore,
      Optional<Amount> rod,
      Optional<Amount> steel) {
    return new ForkParts(
        ForkKind.PRESSURISED_CARTRIDGE, travel, seal, bore, rod, steel, Optional.empty(), "");
  }

  /** An oil gets thinner as it warms. */
  @Test
  void oils() {
    taken(() -> oil("20", "4"));
    refused(Fault.LIMITS_CROSSED, () -> oil("4", "4"));
    refused(Fault.LIMITS_CROSSED, () -> oil("4", "20"));
    refused(Fault.OUT_OF_RANGE, () -> oil("0", "4"));
    refused(Fault.OUT_OF_RANGE, () -> oil("4", "-1"));
  }

  private static Oil oil(String at40, String at100) {
    KinematicViscosity unit = KinematicViscosity.SQUARE_MILLIMETRE_PER_SECOND;
    return new Oil(
        new OilId("oil"),
        "Oil",
        Optional.of(Amount.of(at40, unit)),
        Optional.of(Amount.of(at100, unit)));
  }

  @Test
  void chambers() {
    Range limits = new Range(ml("300"), ml("380"));
    taken(() -> chamber(Measure.VOLUME, limits, Optional.of(ml("300"))));
    refused(Fault.OUT_OF_RANGE, () -> chamber(Measure.VOLUME, limits, Optional.of(ml("299"))));
    refused(Fault.WRONG_UNIT, () -> chamber(Measure.VOLUME, limits, Optional.of(mm("300"))));
    refused(Fault.WRONG_UNIT, () -> chamber(Measure.LEVEL, limits, NONE));
    refused(Fault.OUT_OF_RANGE, () -> chamber(Measure.VOLUME, new Range(ml("0"), ml("380")), NONE));
  }

  private static Chamber chamber(Measure measure, Range limits, Optional<Amount> nominal) {
    return new Chamber(
        Bench.OUTER, "Outer", Carrier.PAIR, measure, limits, nominal, Optional.empty());
  }

  @Test
  void limitsAndSteps() {
    refused(Fault.LIMITS_CROSSED, () -> new Range(mm("2"), mm("1")));
    refused(Fault.WRONG_UNIT, () -> new Range(mm("1"), ml("2")));
    taken(() -> scale(Limits.stops(clicks(0), clicks(20)), clicks(1), OptionalInt.of(1)));
    refused(
        Fault.OUT_OF_RANGE,
        () -> scale(Limits.stops(clicks(0), clicks(20)), clicks(0), OptionalInt.empty()));
    refused(
        Fault.WRONG_UNIT,
        () -> scale(Limits.stops(clicks(0), clicks(20)), mm("1"), OptionalInt.empty()));
    refused(
        Fault.OUT_OF_RANGE,
        () -> scale(Limits.stops(clicks(0), clicks(20)), clicks(1), OptionalInt.of(0)));
    refused(
        Fault.OUT_OF_RANGE,
        () -> scale(Limits.stops(clicks(0), clicks(20)), clicks(1), OptionalInt.of(1001)));
  }

  private static Scale scale(Limits limits, Amount step, OptionalInt total) {
    return new Scale(limits, Optional.empty(), step, Datum.OUT_FROM_CLOSED, Sense.SOFTER, total);
  }

  @Test
  void numbersThatAreNoAmounts() {
    taken(() -> ratio("0.05"));
    taken(() -> ratio("20"));
    refused(Fault.OUT_OF_RANGE, () -> ratio("0.049"));
    refused(Fault.OUT_OF_RANGE, () -> ratio("20.1"));
    taken(() -> ratio("0.123456789012"));
    refused(Fault.TOO_MANY_DIGITS, () -> ratio("0.1234567890123"));
    refused(Fault.TOO_MANY_DIGITS, () -> ratio("0.10000000000000"));
    taken(() -> new RuleChange("rule", new BigDecimal("-5"), "why"));
    refused(Fault.OUT_OF_RANGE, () -> new RuleChange("rule", new BigDecimal("5.1"), "why"));
    refused(Fault.EMPTY, () -> new RuleChange("rule", BigDecimal.ONE, " "));
    for (double chance : new double[] {0, 1}) {
      taken(() -> proposal(chance));
    }
    refused(Fault.OUT_OF_RANGE, () -> proposal(-0.01));
    refused(Fault.OUT_OF_RANGE, () -> proposal(1.01));
    refused(Fault.OUT_OF_RANGE, () -> proposal(Double.NaN));
  }

  private static MotionRatio ratio(String value) {
    return new MotionRatio(new BigDecimal(value), RatioConvention.SPRING_OVER_WHEEL);
  }

  /** Both conventions say the same linkage: 0.4 mm of spring for each of the wheel, or 2.5 back. */
  @Test
  void aMotionRatioIsReadInItsConvention() {
    assertThat(ratio("0.4").springOverWheel()).isEqualTo(0.4);
    assertThat(
            new MotionRatio(new BigDecimal("2.5"), RatioConvention.WHEEL_OVER_SPRING)
                .springOverWheel())
        .isEqualTo(0.4);
  }

  private static Proposal proposal(double chance) {
    return new Proposal(
        new ProposalId("p"),
        Bench.TUBE,
        Reading.of(mm("5")),
        Reading.of(mm("4")),
        "",
        OptionalDouble.of(chance),
        new Answer.Open());
  }

  @Test
  void whatIsNothing() {
    refused(
        Fault.OUT_OF_RANGE,
        () ->
            new Tightening(Fastener.AXLE_NUT, "Axle", Amount.of(0, Torque.NEWTON_METRE), "manual"));
    refused(
        Fault.OUT_OF_RANGE,
        () ->
            new ServiceItem(
                new ServiceId("s"), "S", End.FRONT, ServiceKind.OTHER, hours("0"), true));
    refused(Fault.OUT_OF_RANGE, () -> new Rider.Weight(DAY, Amount.of(0, Mass.KILOGRAM)));
    refused(Fault.WRONG_UNIT, () -> new Rider.Weight(DAY, Amount.of(80, Volume.LITRE)));
    refused(Fault.EMPTY, () -> new Bike(Bench.BIKE, "Bike", List.of()));
    refused(Fault.TWICE, () -> new Bike(Bench.BIKE, "Bike", List.of(Bench.sheet(), Bench.sheet())));
    refused(Fault.NO_SHEET, () -> Bench.bike().withoutSheet(DAY));
    refused(Fault.EMPTY, () -> Bench.bike().withoutSheet(Bench.SPRING));
    refused(Fault.UNKNOWN_ID, () -> Bench.sheet().withChambers(List.of()));
  }

  @Test
  void moreThanAListHolds() {
    taken(() -> Checks.list("thing", Collections.nCopies(10_000, "x")));
    refused(Fault.TOO_MANY, () -> Checks.list("thing", Collections.nCopies(10_001, "x")));
    refused(Fault.TWICE, () -> Checks.unique("thing", List.of("a", "b", "a"), text -> text));
    refused(
        Fault.TOO_MANY,
        () -> Checks.unique("thing", Collections.nCopies(10_001, "x"), text -> text));
  }

  @Test
  void aFaultTellsItsWholePath() {
    NotebookException fault = new NotebookException(Fault.EMPTY, "name");
    assertThat(fault.where()).isEmpty();
    assertThat(fault).hasMessage("EMPTY [name]");
    assertThat(fault.in("start").in("entries/e-1"))
        .hasMessage("entries/e-1/start: EMPTY [name]")
        .extracting(each -> each.facts())
        .isEqualTo(List.of("name"));
  }
}
