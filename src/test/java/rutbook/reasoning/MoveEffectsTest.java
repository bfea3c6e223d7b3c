package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rutbook.json.RulesJson;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.RuleChange;
import rutbook.notebook.Section;
import rutbook.notebook.Setting;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;

/** What a difference does: rules as they stand in their file, motos as they can be counted. */
class MoveEffectsTest {
  private static final RuleBook RULES = RulesJson.ofTheTrade();
  private static final LocalDate MAY = LocalDate.of(2026, 5, 3);
  private static final Setting COMPRESSION =
      Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();

  private static Reading clicks(long number) {
    return Reading.bothLegs(Bench.clicks(number));
  }

  private static Feel dives(int severity) {
    return Feel.of(End.FRONT, Section.CORNER_ENTRY, Symptom.DIVES, severity);
  }

  private static Moto moto(int number, int severity, Change... changes) {
    return Bench.moto("m" + number, List.of(changes), List.of(dives(severity)));
  }

  private static Change to(long clicks) {
    return new Change(Bench.FORK_COMPRESSION, clicks(clicks), Optional.empty(), "");
  }

  private static MoveEffects of(Notebook notebook) {
    return MoveEffects.of(notebook, Timeline.of(notebook, Bench.BIKE), RULES);
  }

  private static Notebook ridden(Moto... motos) {
    return Bench.notebook()
        .with(Bench.session("s", MAY, Bench.HOLLOW, Bench.setup(), List.of(motos)));
  }

  private static MoveEffect firmer(Notebook notebook) {
    return of(notebook).of(COMPRESSION, clicks(15), clicks(12), List.of()).orElseThrow();
  }

  @Test
  void everyRuleOfTheSettingIsScaledByTheDosesOfTheDifference() {
    MoveEffect effect = firmer(Bench.notebook());

    assertThat(effect.doses()).isEqualTo(3);
    assertThat(effect.trade()).hasSize(rulesOf(COMPRESSION));
    assertThat(effect.trade())
        .allSatisfy(
            each -> assertThat(each.points()).isEqualTo(each.rule().size() * 3, within(1e-12)));
    assertThat(effect.own()).isEmpty();
  }

  private static int rulesOf(Setting setting) {
    return (int) RULES.rules().stream().filter(rule -> rule.role() == setting.role()).count();
  }

  @Test
  void whatWasFeltIsToldFirst() {
    Feel pushes = Feel.of(End.FRONT, Section.MID_CORNER, Symptom.PUSHES, 1);
    MoveEffect effect =
        of(Bench.notebook()).of(COMPRESSION, clicks(15), clicks(12), List.of(pushes)).orElseThrow();
    assertThat(effect.trade().get(0).rule().id()).isEqualTo("pushes-compression");
  }

  /** 12 out is where the bench's setup stands: firmer, firmer, back. */
  @Test
  void goingBackAndGettingWorseCountsAsBetterThisWay() {
    Notebook notebook =
        ridden(moto(1, 3), moto(2, 2, to(10)), moto(3, 2, to(8)), moto(4, 4, to(12)));
    assertThat(firmer(notebook).own())
        .containsExactly(new MoveEffect.ByMotos(Complaint.of(dives(1)), 2, 1, 0, 0));
  }

  @Test
  void theOtherWayCountsTheOtherWayRound() {
    Notebook notebook = ridden(moto(1, 3), moto(2, 2, to(10)));
    MoveEffect softer =
        of(notebook).of(COMPRESSION, clicks(12), clicks(15), List.of()).orElseThrow();
    assertThat(softer.own())
        .containsExactly(new MoveEffect.ByMotos(Complaint.of(dives(1)), 0, 0, 1, 0));
  }

  @Test
  void twoThingsChangedAtOnceAreMixedAndTellNothingAlone() {
    Change rebound = new Change(Bench.FORK_REBOUND, clicks(9), Optional.empty(), "");
    Notebook notebook = ridden(moto(1, 3), moto(2, 1, to(10), rebound));
    assertThat(firmer(notebook).own())
        .containsExactly(new MoveEffect.ByMotos(Complaint.of(dives(1)), 0, 0, 0, 1));
  }

  @Test
  void theNotebooksOwnSizeOfARuleHolds() {
    Notebook notebook =
        Bench.notebook()
            .withRuleChanges(
                List.of(new RuleChange("dives-compression", new BigDecimal("-0.1"), "my fork")));
    double points =
        firmer(notebook).trade().stream()
            .filter(each -> each.rule().id().equals("dives-compression"))
            .findFirst()
            .orElseThrow()
            .points();
    assertThat(points).isEqualTo(-0.3, within(1e-12));
  }

  @Test
  void whereNothingMovesOrALegIsNotKnownThereIsNothingToTell() {
    MoveEffects effects = of(Bench.notebook());
    Reading unknown = Reading.unknown(COMPRESSION.carrier(), rutbook.notebook.WhyUnknown.NOT_NOTED);
    assertThat(effects.of(COMPRESSION, clicks(12), clicks(12), List.of())).isEmpty();
    assertThat(effects.of(COMPRESSION, clicks(12), unknown, List.of())).isEmpty();
  }

  @Property(tries = 100)
  void thereAndBackAreOppositeAndNoRuleExpectsMoreThanTheScaleHolds(@ForAll long seed) {
    Notebook notebook = NextChangeTest.any(seed);
    MoveEffects effects = of(notebook);
    Timeline timeline = Timeline.of(notebook, Bench.BIKE);
    List<Setting> settings = new ArrayList<>(Bench.settings());
    for (Setting setting : settings) {
      Reading before = Bench.setup().reading(setting.id()).orElseThrow();
      Reading now = timeline.now().reading(setting.id()).orElse(before);
      Optional<MoveEffect> there = effects.of(setting, before, now, List.of());
      Optional<MoveEffect> back = effects.of(setting, now, before, List.of());
      assertThat(there.isPresent()).isEqualTo(back.isPresent());
      there.ifPresent(
          effect -> {
            assertThat(effect.trade()).allMatch(each -> Math.abs(each.points()) <= 5);
            assertThat(effect.own().stream().mapToInt(MoveEffect.ByMotos::better).sum())
                .isEqualTo(back.get().own().stream().mapToInt(MoveEffect.ByMotos::worse).sum());
          });
    }
  }
}
