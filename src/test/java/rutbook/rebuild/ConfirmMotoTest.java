package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rutbook.notebook.Bench.clicks;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Head;
import rutbook.notebook.Job;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Outcome;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Scope;
import rutbook.notebook.Section;
import rutbook.notebook.Setup;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.rebuild.ConfirmMoto.Verdict;

class ConfirmMotoTest {
  private static final Plan FORK = Jobs.plan(Scope.FORK);

  private static Feel harsh(int severity) {
    return Feel.of(End.FRONT, Section.BRAKING_BUMPS, Symptom.HARSH, severity);
  }

  private static Feel kicks(int severity) {
    return Feel.of(End.REAR, Section.SQUARE_EDGES, Symptom.KICKS, severity);
  }

  private static Feel dives(int severity) {
    return Feel.of(End.FRONT, Section.CORNER_ENTRY, Symptom.DIVES, severity);
  }

  private static Moto moto(String id, Feel... feel) {
    return Bench.moto(id, List.of(), List.of(feel));
  }

  private static ConfirmMoto judge(Plan plan, List<Moto> before, Moto... after) {
    return ConfirmMoto.judge(before, List.of(after), plan);
  }

  @Test
  void underHalfAPointOnAverageIsBack() {
    List<Moto> before = List.of(moto("a", harsh(1), kicks(2), dives(0)), moto("b", harsh(2)));
    ConfirmMoto judged = judge(FORK, before, moto("c", harsh(2), kicks(2), dives(0)));
    assertThat(judged.verdict()).isEqualTo(Verdict.BACK);
    assertThat(judged.symptoms().get(0)).isEqualTo(new SymptomRise(harsh(0).key(), 1.5, 2));
    assertThat(judged.meanRise()).isCloseTo(0.5 / 3, within(1e-12));
    assertThat(judged.suspects()).isEmpty();
  }

  @Test
  void exactlyHalfAPointIsNotYetBack() {
    assertThat(
            judge(FORK, List.of(moto("a", harsh(1), kicks(1))), moto("c", harsh(2), kicks(1)))
                .verdict())
        .isEqualTo(Verdict.REPEAT);
  }

  @Test
  void oneSymptomTwoPointsWorseIsNotBackWhateverTheMean() {
    List<Moto> before = List.of(moto("a", harsh(1), kicks(3), dives(2)));
    ConfirmMoto judged = judge(FORK, before, moto("c", harsh(3), kicks(2), dives(1)));
    assertThat(judged.meanRise()).isZero();
    assertThat(judged.worstRise()).isEqualTo(2);
    assertThat(judged.verdict()).isEqualTo(Verdict.REPEAT);
  }

  @Test
  void aRepeatIsAveragedWithTheFirstBeforeAnyCauseIsLookedFor() {
    List<Moto> before = List.of(moto("a", harsh(1)));
    assertThat(judge(FORK, before, moto("c", harsh(2)), moto("d", harsh(0))).verdict())
        .isEqualTo(Verdict.BACK);
    assertThat(judge(FORK, before, moto("c", harsh(2)), moto("d", harsh(2))).verdict())
        .isEqualTo(Verdict.NOT_BACK);
  }

  @Test
  void whatWasNotMentionedIsUnknownAndAskedFor() {
    ConfirmMoto judged = judge(FORK, List.of(moto("a", harsh(1))), moto("c", kicks(5)));
    assertThat(judged.verdict()).isEqualTo(Verdict.NOTHING_TO_COMPARE);
    assertThat(judged.unrated()).containsExactly(harsh(0).key());
  }

  @Test
  void causesComeInOrderOfLikelihoodForTheEndThatGotWorse() {
    ConfirmMoto front =
        judge(FORK, List.of(moto("a", harsh(1))), moto("c", harsh(3)), moto("d", harsh(3)));
    assertThat(front.suspects()).extracting(Suspect::cause).containsExactly(Cause.values());
    ConfirmMoto rear =
        judge(
            Jobs.plan(Scope.SHOCK),
            List.of(moto("a", kicks(1))),
            moto("c", kicks(3)),
            moto("d", kicks(3)));
    assertThat(rear.suspects())
        .extracting(Suspect::cause)
        .containsExactly(Cause.COUNT_FROM_WRONG_END, Cause.SAG, Cause.TYRE_PRESSURE);
    assertThat(rear.suspects().get(0).cause().check()).isEqualTo(Cause.Check.COUNT_TO_CLOSED_AGAIN);
  }

  @Test
  void aCauseThatTheJobPointsToComesFirst() {
    Plan plan =
        Jobs.plan(
            Jobs.from(Scope.FORK),
            Jobs.counted("total:fork-rebound:left", Reading.of(clicks(15))),
            Jobs.skipped("compress:left", "forgot"));
    List<Suspect> suspects =
        judge(plan, List.of(moto("a", harsh(1))), moto("c", harsh(3)), moto("d", harsh(3)))
            .suspects();
    assertThat(suspects)
        .extracting(Suspect::cause)
        .startsWith(Cause.COUNT_FROM_WRONG_END, Cause.PINCHED_AXLE, Cause.AIR_IN_CARTRIDGE);
    assertThat(suspects.get(0).because()).hasSize(1);
  }

  @Test
  void theMotosThatSpeakAreThoseOnTheBaselineBeforeAndUnchangedAfter() {
    Setup baseline = Bench.setup();
    Setup other = baseline.with(Placed.set(Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(10))));
    LocalDate day = Bench.SPRING;
    PlanFrom from = Jobs.from(Scope.FORK);
    Notebook notebook =
        Bench.notebook()
            .with(session("s1", day.plusDays(1), baseline, moto("m1"), moto("m2")))
            .with(session("s2", day.plusDays(2), other, moto("m3")))
            .with(session("s3", day.plusDays(3), baseline, moto("m4"), moto("m5")))
            .with(
                new Entry.RebuildJob(
                    Head.of(new EntryId("job"), Bench.BIKE, day.plusDays(4), 0),
                    new Job(
                        Scope.FORK,
                        from.job().renewed(),
                        Bench.FIRST_BASELINE,
                        baseline,
                        Bench.SPRING,
                        Optional.empty()),
                    List.of(),
                    Outcome.UNDER_WAY))
            .with(
                session(
                    "s4",
                    day.plusDays(5),
                    baseline,
                    moto("m6"),
                    Bench.moto(
                        "m7",
                        List.of(Change.of(Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(11)))),
                        List.of())));
    Timeline timeline = Timeline.of(notebook, Bench.BIKE);
    assertThat(BaselineMotos.before(timeline, new EntryId("job"), baseline))
        .extracting(each -> each.id().text())
        .containsExactly("m2", "m4", "m5");
    assertThat(BaselineMotos.after(timeline, new EntryId("job")))
        .extracting(each -> each.id().text())
        .containsExactly("m6");
  }

  private static Entry.Session session(String id, LocalDate day, Setup start, Moto... motos) {
    return Bench.session(id, day, Bench.HOLLOW, start, List.of(motos));
  }
}
