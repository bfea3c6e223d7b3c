package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import rutbook.notebook.Role;
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

  private static Rule made(String id, Symptom symptom, double size, boolean disputed) {
    return new Rule(
        id,
        End.FRONT,
        symptom,
        Set.of(),
        Optional.empty(),
        Optional.empty(),
        Role.FORK_COMPRESSION,
        size,
        disputed,
        "made up");
  }

  /** What is felt first, then what nobody disputes, then what moves it most. */
  @Test
  void rulesAreInTheOrderInWhichTheyMatter() {
    RuleBook book =
        new RuleBook(
            "test",
            List.of(
                made("small", Symptom.TUCKS, 0.1, false),
                made("disputed", Symptom.PACKS, -0.9, true),
                made("great", Symptom.BOTTOMS, -0.5, false),
                made("felt", Symptom.PUSHES, 0.05, true)));
    Notebook notebook = Bench.notebook();
    MoveEffect effect =
        MoveEffects.of(notebook, Timeline.of(notebook, Bench.BIKE), book)
            .of(
                COMPRESSION,
                clicks(15),
                clicks(12),
                List.of(Feel.of(End.FRONT, Section.MID_CORNER, Symptom.PUSHES, 1)))
            .orElseThrow();
    assertThat(effect.trade())
        .extracting(each -> each.rule().id())
        .containsExactly("felt", "great", "small", "disputed");
  }

  private static Feel front(Symptom symptom, int severity) {
    return Feel.of(End.FRONT, Section.CORNER_ENTRY, symptom, severity);
  }

  private static Moto told(int number, int harsh, int packs, int tucks, Change... changes) {
    return Bench.moto(
        "m" + number,
        List.of(changes),
        List.of(
            front(Symptom.HARSH, harsh), front(Symptom.PACKS, packs), front(Symptom.TUCKS, tucks)));
  }

  /** Of what is known alike, what went one way every time tells more than what went both. */
  @Test
  void whatMotosShowIsInTheOrderInWhichItIsKnown() {
    Notebook notebook = ridden(told(1, 3, 3, 3), told(2, 2, 2, 3, to(10)), told(3, 1, 3, 3, to(8)));
    MoveEffects effects =
        MoveEffects.of(notebook, Timeline.of(notebook, Bench.BIKE), RuleBook.none());
    assertThat(symptoms(effects, List.of()))
        .as("2 better, then 1 better and 1 worse as 2 the same")
        .startsWith(Symptom.HARSH);
    assertThat(symptoms(effects, List.of(front(Symptom.TUCKS, 2))))
        .as("what is felt comes first")
        .startsWith(Symptom.TUCKS, Symptom.HARSH);
    RuleBook speaks = new RuleBook("test", List.of(made("packs", Symptom.PACKS, 0.2, false)));
    MoveEffects ruled = MoveEffects.of(notebook, Timeline.of(notebook, Bench.BIKE), speaks);
    assertThat(symptoms(ruled, List.of(front(Symptom.TUCKS, 2))))
        .as("what a rule speaks of comes before what is felt")
        .containsExactly(Symptom.PACKS, Symptom.TUCKS, Symptom.HARSH);
  }

  private static List<Symptom> symptoms(MoveEffects effects, List<Feel> felt) {
    return effects.of(COMPRESSION, clicks(15), clicks(12), felt).orElseThrow().own().stream()
        .map(each -> each.complaint().symptom())
        .toList();
  }

  /** A clean comparison tells more than any number of mixed ones. */
  @Test
  void whatWasTriedAloneComesBeforeWhatWasMixed() {
    Change rebound = new Change(Bench.FORK_REBOUND, clicks(9), Optional.empty(), "");
    Moto mixed = Bench.moto("m2", List.of(to(10), rebound), List.of(front(Symptom.HARSH, 1)));
    Moto alone = Bench.moto("m4", List.of(to(8)), List.of(front(Symptom.TUCKS, 3)));
    Notebook notebook =
        ridden(
            Bench.moto("m1", List.of(), List.of(front(Symptom.HARSH, 3))),
            mixed,
            Bench.moto("m3", List.of(), List.of(front(Symptom.TUCKS, 3))),
            alone);
    MoveEffects effects =
        MoveEffects.of(notebook, Timeline.of(notebook, Bench.BIKE), RuleBook.none());
    assertThat(symptoms(effects, List.of(front(Symptom.HARSH, 1))))
        .containsExactly(Symptom.TUCKS, Symptom.HARSH);
    MoveEffect.ByMotos tucks =
        effects.of(COMPRESSION, clicks(15), clicks(12), List.of()).orElseThrow().own().get(0);
    assertThat(tucks.clean()).isEqualTo(1);
    assertThat(new MoveEffect.ByMotos(tucks.complaint(), 2, 3, 4, 9).clean()).isEqualTo(9);
  }

  /** On an older sheet it may have been counted in another unit: then nothing is told. */
  @Test
  void aReadingInAnotherUnitTellsNothing() {
    Reading lengths = Reading.bothLegs(Bench.mm("3"));
    MoveEffects effects = of(Bench.notebook());
    assertThat(effects.of(COMPRESSION, lengths, clicks(12), List.of())).isEmpty();
    assertThat(effects.of(COMPRESSION, clicks(12), lengths, List.of())).isEmpty();
  }
}
