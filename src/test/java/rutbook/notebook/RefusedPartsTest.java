package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.mm;

import java.lang.reflect.Constructor;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import rutbook.units.Amount;
import rutbook.units.Length;
import rutbook.units.Mass;

/** Ids and parts that no notebook takes. */
class RefusedPartsTest {
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

  /** Every name of a thing is checked alike, and is what it says. */
  @Test
  void everyKindOfId() throws ReflectiveOperationException {
    for (Class<?> kind : Id.class.getPermittedSubclasses()) {
      Constructor<?> made = kind.getDeclaredConstructor(String.class);
      assertThat(made.newInstance("good-1")).hasToString("good-1");
      assertThatThrownBy(() -> made.newInstance("no good"))
          .as(kind.getSimpleName())
          .hasRootCauseInstanceOf(NotebookException.class);
    }
  }

  @Test
  void measuresOfTheShock() {
    Optional<Amount> nothing = Optional.of(mm("0"));
    taken(() -> shock(NONE, NONE, NONE, List.of(), Optional.empty()));
    refused(Fault.OUT_OF_RANGE, () -> shock(nothing, NONE, NONE, List.of(), Optional.empty()));
    refused(Fault.OUT_OF_RANGE, () -> shock(NONE, nothing, NONE, List.of(), Optional.empty()));
    refused(Fault.OUT_OF_RANGE, () -> shock(NONE, NONE, nothing, List.of(), Optional.empty()));
    refused(Fault.WRONG_UNIT, () -> shock(NONE, NONE, NONE, List.of(mm("54")), Optional.empty()));
    refused(
        Fault.WRONG_UNIT,
        () -> shock(NONE, NONE, NONE, List.of(), Optional.of(new Range(mm("9"), mm("11")))));
  }

  private static ShockParts shock(
      Optional<Amount> travel,
      Optional<Amount> freeLength,
      Optional<Amount> pitch,
      List<Amount> springs,
      Optional<Range> gas) {
    return new ShockParts(travel, Optional.empty(), freeLength, pitch, springs, true, "", gas);
  }

  @Test
  void unitsOfWhatIsMeasured() {
    refused(
        Fault.WRONG_UNIT,
        () ->
            new Entry.SagMeasured(
                head(DAY, 0, NONE),
                End.REAR,
                Optional.of(mm("104")),
                NONE,
                Optional.empty(),
                NONE,
                Optional.of(mm("4"))));
    refused(Fault.WRONG_UNIT, () -> baseline(Optional.of(ml("104")), NONE));
    refused(Fault.WRONG_UNIT, () -> baseline(NONE, Optional.of(ml("33"))));
    refused(
        Fault.WRONG_UNIT,
        () -> new Track(Bench.HOLLOW, "Hollow", Optional.empty(), Optional.of(ml("300")), ""));
    refused(
        Fault.WRONG_UNIT,
        () ->
            new Scale(
                Limits.stops(clicks(0), clicks(20)),
                Optional.of(new Range(mm("1"), mm("2"))),
                clicks(1),
                Datum.OUT_FROM_CLOSED,
                Sense.SOFTER,
                OptionalInt.empty()));
    refused(
        Fault.WRONG_UNIT,
        () ->
            Bench.sheet()
                .withSettings(
                    List.of(
                        Bench.fill(Bench.FORK_OIL, "Oil", Role.FORK_OIL, Bench.OUTER, mm("5")))));
    refused(Fault.OUT_OF_RANGE, () -> new Range(Amount.of(-9_000_000_000L, Length.METRE), mm("1")));
    refused(
        Fault.OUT_OF_RANGE,
        () -> baseline(Optional.of(Amount.of(9_000_000_000L, Length.METRE)), NONE));
    refused(
        Fault.BAD_DAY,
        () -> new Rider.Weight(LocalDate.of(1900, 1, 1), Amount.of(80, Mass.KILOGRAM)));
    refused(
        Fault.BAD_DAY,
        () ->
            new Job(
                Scope.FORK,
                Set.of(),
                Bench.FIRST_BASELINE,
                Bench.setup(),
                LocalDate.of(1900, 1, 1),
                Optional.empty()));
    refused(
        Fault.BAD_DAY,
        () ->
            new StepDone(
                StepId.METER,
                Instant.EPOCH,
                new Entered.Ticked(),
                Optional.of(LocalDate.of(1900, 1, 1))));
  }

  private static Entry baseline(Optional<Amount> race, Optional<Amount> free) {
    return new Entry.Baseline(head(DAY, 0, NONE), Bench.setup(), race, free, "", Optional.empty());
  }

  @Test
  void whatTheDayWasLikeIsKept() {
    assertThat(conditionsReady(Set.of(Ready.TYRES_COLD)).ready()).containsExactly(Ready.TYRES_COLD);
    assertThat(new Snapshot(Bench.setup(), DAY, Set.of(Shared.values())).shared())
        .containsExactlyInAnyOrder(Shared.values());
  }

  private static Conditions conditionsReady(Set<Ready> ready) {
    return new Conditions(Optional.empty(), Optional.empty(), OptionalInt.empty(), NONE, ready);
  }
}
