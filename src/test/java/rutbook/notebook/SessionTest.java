package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.units.Amount;

/** A day's setups moto by moto, and a rebuild's steps. */
class SessionTest {
  private static final LocalDate APRIL = LocalDate.of(2026, 4, 4);
  private static final Setup START = Bench.setup();
  private static final Reading SOFTER = Reading.bothLegs(clicks(14));
  private static final Reading SOFTEST = Reading.bothLegs(clicks(16));

  private static Moto moto(String id, Reading... compression) {
    return Bench.moto(
        id,
        List.of(compression).stream().map(to -> Change.of(Bench.FORK_COMPRESSION, to)).toList(),
        List.of());
  }

  private static final Entry.Session DAY =
      Bench.session(
          "s-1", APRIL, Bench.HOLLOW, START, List.of(moto("a"), moto("b", SOFTER), moto("c")));

  private static Setup with(Reading compression) {
    return START.with(Placed.set(Bench.FORK_COMPRESSION, compression));
  }

  @Test
  void aChangeHoldsFromItsMotoOn() {
    assertThat(DAY.setups()).containsExactly(START, with(SOFTER), with(SOFTER));
    for (int i = 0; i < DAY.motos().size(); i++) {
      assertThat(DAY.setupOf(i)).isEqualTo(DAY.setups().get(i));
    }
    assertThat(DAY.end()).isEqualTo(with(SOFTER));
    assertThat(DAY.withMotos(List.of()).end()).isEqualTo(START);
    assertThat(DAY.withMotos(List.of()).setups()).isEmpty();
  }

  @Test
  void aMotoIsFoundByItsId() {
    assertThat(DAY.moto(new MotoId("b"))).contains(DAY.motos().get(1));
    assertThat(DAY.moto(new MotoId("z"))).isEmpty();
  }

  /** What is seen as it was noted stays chosen; what is seen otherwise counts as found. */
  @Test
  void theCheckAtTheEndFindsOnlyWhatIsNotAsNoted() {
    Entry.Session asNoted = checked(SOFTER);
    assertThat(asNoted.end()).isEqualTo(with(SOFTER));
    assertThat(checked(SOFTEST).end())
        .isEqualTo(START.with(Placed.found(Bench.FORK_COMPRESSION, SOFTEST)));
  }

  private static Entry.Session checked(Reading seen) {
    return DAY.withCheck(
        Optional.of(
            new EndOfDayCheck(List.of(new EndOfDayCheck.Found(Bench.FORK_COMPRESSION, seen)))));
  }

  @Test
  void aStepDoneAgainIsDoneOnce() {
    StepId count = StepId.placing(Bench.FORK_COMPRESSION);
    StepId other = StepId.placing(Bench.FORK_REBOUND);
    Job job =
        new Job(
            Scope.FORK,
            Set.of(Renewed.OIL),
            Bench.FIRST_BASELINE,
            START,
            Bench.SPRING,
            Optional.empty());
    Entry.RebuildJob rebuild =
        new Entry.RebuildJob(
            Head.of(new EntryId("job-1"), Bench.BIKE, APRIL, 0), job, List.of(), Outcome.UNDER_WAY);
    StepDone first = counted(count, clicks(12));
    StepDone second = counted(other, clicks(11));
    StepDone again = counted(count, clicks(13));
    Entry.RebuildJob done = rebuild.withDone(first).withDone(second);
    assertThat(done.done()).containsExactly(first, second);
    assertThat(done.done(count)).contains(first);
    assertThat(done.done(other)).contains(second);
    assertThat(rebuild.done(count)).isEmpty();
    assertThat(done.withDone(again).done()).containsExactly(second, again);
    assertThat(done.withoutDone(count).done()).containsExactly(second);
    assertThat(done.withoutDone(count).withoutDone(other)).isEqualTo(rebuild);
    assertThat(RebuildReadings.applied(START, done.withDone(again).done()))
        .isEqualTo(
            START
                .with(Placed.found(Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(13))))
                .with(Placed.found(Bench.FORK_REBOUND, Reading.bothLegs(clicks(11)))));
  }

  private static StepDone counted(StepId step, Amount clicks) {
    return new StepDone(step, Instant.EPOCH, new Entered.Counted(Reading.bothLegs(clicks)));
  }

  /** What the shop left counts until the setting is put, in whatever order it was written down. */
  @Test
  void whatWasPutAtTheBenchCountsMoreThanWhatTheShopLeft() {
    StepDone shop = counted(StepId.finding(Bench.FORK_REBOUND), clicks(3));
    StepDone put = counted(StepId.placing(Bench.FORK_REBOUND), clicks(11));
    assertThat(StepId.finding(Bench.FORK_REBOUND).found()).contains(Bench.FORK_REBOUND);
    assertThat(StepId.finding(Bench.FORK_REBOUND).placed()).isEmpty();
    assertThat(RebuildReadings.applied(START, List.of(shop)).placed(Bench.FORK_REBOUND))
        .contains(Placed.found(Bench.FORK_REBOUND, Reading.bothLegs(clicks(3))));
    for (List<StepDone> order : List.of(List.of(shop, put), List.of(put, shop))) {
      assertThat(RebuildReadings.applied(START, order).placed(Bench.FORK_REBOUND))
          .contains(Placed.found(Bench.FORK_REBOUND, Reading.bothLegs(clicks(11))));
    }
    StepDone ticked =
        new StepDone(StepId.placing(Bench.FORK_REBOUND), Instant.EPOCH, new Entered.Ticked());
    assertThat(RebuildReadings.applied(START, List.of(ticked))).isEqualTo(START);
  }
}
