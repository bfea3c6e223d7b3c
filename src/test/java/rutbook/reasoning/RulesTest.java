package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Bite;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Role;
import rutbook.notebook.RuleChange;
import rutbook.notebook.Section;
import rutbook.notebook.Setting;
import rutbook.notebook.Symptom;
import rutbook.notebook.When;

/** Which rule holds when; the rules here are made up. */
class RulesTest {
  private static final Setting COMPRESSION =
      Bench.sheet().setting(Bench.FORK_COMPRESSION).orElseThrow();
  private static final Feel HARSH = Feel.of(End.FRONT, Section.SQUARE_EDGES, Symptom.HARSH, 3);
  private static final Complaint CHOP = Complaint.of(HARSH);

  private static Rule rule(
      String id, Set<SectionGroup> groups, Optional<Bite> bite, Optional<When> when, double size) {
    return new Rule(
        id,
        End.FRONT,
        Symptom.HARSH,
        groups,
        bite,
        when,
        Role.FORK_COMPRESSION,
        size,
        false,
        "made up");
  }

  private static Rule rule(String id, double size) {
    return rule(id, Set.of(), Optional.empty(), Optional.empty(), size);
  }

  private static Rule biting(String id, Bite bite, double size) {
    return rule(id, Set.of(), Optional.of(bite), Optional.empty(), size);
  }

  private static Feel answered(Optional<Bite> bite, Optional<When> when) {
    return new Feel(HARSH.end(), HARSH.section(), HARSH.symptom(), 3, bite, when);
  }

  private static RuleBook book(Rule... rules) {
    return new RuleBook("test", List.of(rules));
  }

  private static Optional<String> first(RuleBook book, Optional<Feel> answered) {
    return book.rule(CHOP, COMPRESSION, answered).map(Rule::id);
  }

  @Test
  void aRuleDoesSomethingAndNoMoreThanTheScaleHolds() {
    for (double size : new double[] {0, 5.1, -5.1, Double.NaN}) {
      assertThatThrownBy(() -> rule("r", size)).hasMessageContaining("size of rule r");
    }
    assertThat(rule("r", 5).size()).isEqualTo(5);
    assertThat(rule("r", -5).size()).isEqualTo(-5);
    assertThatThrownBy(() -> rule(" ", 1)).hasMessageContaining("no name");
    assertThatThrownBy(() -> book(rule("r", 1), rule("r", 2))).hasMessageContaining("called r");
  }

  @Test
  void aRuleConcernsItsSymptomAtItsEndInItsSections() {
    Rule anywhere = rule("r", 1);
    assertThat(anywhere.concerns(CHOP)).isTrue();
    assertThat(anywhere.concerns(new Complaint(End.REAR, Symptom.HARSH, SectionGroup.CHOP)))
        .isFalse();
    assertThat(anywhere.concerns(new Complaint(End.FRONT, Symptom.DIVES, SectionGroup.CHOP)))
        .isFalse();
    Rule braking = rule("b", Set.of(SectionGroup.BRAKING), Optional.empty(), Optional.empty(), 1);
    assertThat(braking.concerns(CHOP)).isFalse();
    assertThat(braking.concerns(new Complaint(End.FRONT, Symptom.HARSH, SectionGroup.BRAKING)))
        .isTrue();
    assertThat(anywhere.asks()).isFalse();
    assertThat(biting("q", Bite.values()[0], 1).asks()).isTrue();
    assertThat(rule("w", Set.of(), Optional.empty(), Optional.of(When.values()[0]), 1).asks())
        .isTrue();
  }

  @Test
  void theGreatestRuleThatMayHoldSpeaksForASetting() {
    assertThat(first(book(rule("a", 0.2), rule("b", -0.4), rule("c", 0.3)), Optional.empty()))
        .contains("b");
    assertThat(first(book(rule("x", 0.4), rule("y", -0.4)), Optional.empty()))
        .as("of equals the later name")
        .contains("y");
    assertThat(first(book(), Optional.empty())).isEmpty();
    Setting rebound = Bench.sheet().setting(Bench.FORK_REBOUND).orElseThrow();
    assertThat(book(rule("a", 1)).rule(CHOP, rebound, Optional.empty())).isEmpty();
    RuleBook asks = book(rule("a", 0.2), biting("deflects", Bite.values()[0], 0.5));
    assertThat(first(asks, Optional.empty())).contains("deflects");
    assertThat(first(asks, Optional.of(answered(Optional.of(Bite.values()[1]), Optional.empty()))))
        .as("answered otherwise")
        .contains("a");
  }

  @Test
  void theRidersOwnSizeTakesThePlaceOfARulesAndZeroTakesItOut() {
    RuleBook rules = book(rule("a", 0.2), rule("b", -0.4));
    assertThat(rules.with(List.of()).rules()).isEqualTo(rules.rules());
    assertThat(rules.with(List.of(change("a", "-1"), change("nobody", "2"))).rules())
        .containsExactly(rule("a", -1), rule("b", -0.4));
    assertThat(rules.with(List.of(change("b", "0"))).rules()).containsExactly(rule("a", 0.2));
    assertThat(rules.with(List.of(change("a", "0"), change("a", "3"))).rules())
        .as("the last one counts")
        .containsExactly(rule("a", 3), rule("b", -0.4));
    assertThat(rules.with(List.of()).version()).isEqualTo("test");
    assertThat(RuleBook.none().rules()).isEmpty();
  }

  private static RuleChange change(String rule, String size) {
    return new RuleChange(rule, new BigDecimal(size), "mine");
  }

  @Test
  void anAnswerDecidesHowFarARuleCounts() {
    Bite bite = Bite.values()[0];
    When when = When.values()[0];
    Rule both = rule("r", Set.of(), Optional.of(bite), Optional.of(when), 1);
    assertThat(Questions.share(rule("r", 1), Optional.empty())).isEqualTo(1);
    assertThat(Questions.share(both, Optional.empty())).isEqualTo(0.25);
    assertThat(Questions.share(both, answer(bite, null))).isEqualTo(0.5);
    assertThat(Questions.share(both, answer(bite, when))).isEqualTo(1);
    assertThat(Questions.share(both, answer(Bite.values()[1], when))).isEqualTo(0);
    assertThat(Questions.share(both, answer(null, When.values()[1]))).isEqualTo(0);
  }

  private static Optional<Feel> answer(Bite bite, When when) {
    return Optional.of(answered(Optional.ofNullable(bite), Optional.ofNullable(when)));
  }

  /** Every answer that could be given has its sum, and their chances add up to one. */
  @Test
  void anOpenQuestionIsAsManySumsAsItHasAnswers() {
    Bite bite = Bite.values()[0];
    List<Rule> rules = List.of(rule("a", 0.2), biting("q", bite, -0.5));
    assertThat(Questions.sizes(rules, Optional.empty()))
        .containsOnlyKeys(-0.3, 0.2)
        .allSatisfy((size, chance) -> assertThat(chance).isCloseTo(0.5, within(1e-12)));
    assertThat(Questions.sizes(rules, answer(bite, null)).keySet()).containsExactly(-0.3);
    assertThat(Questions.sizes(rules, answer(Bite.values()[1], null)).keySet())
        .containsExactly(0.2);
    assertThat(Questions.sizes(List.of(), Optional.empty()).keySet()).containsExactly(0.0);
    When when = When.values()[0];
    List<Rule> two =
        List.of(rule("w", Set.of(), Optional.of(bite), Optional.of(when), 1), rule("a", 2));
    assertThat(
            Questions.sizes(two, Optional.empty()).values().stream()
                .mapToDouble(Double::doubleValue)
                .sum())
        .isCloseTo(1, within(1e-12));
    assertThat(Questions.sizes(two, answer(null, When.values()[1])).keySet()).containsExactly(2.0);
  }

  /** Where evidence is pooled; common practice, no source. */
  @Test
  void everySectionIsInOneGroupAndEverySymptomHasAPlace() {
    assertThat(Stream.of(Section.values()).map(SectionGroup::of))
        .containsExactly(
            SectionGroup.STRAIGHT, // straight
            SectionGroup.BRAKING, // braking bumps
            SectionGroup.CHOP, // square edges
            SectionGroup.BRAKING, // corner entry
            SectionGroup.CORNER, // mid-corner
            SectionGroup.CORNER, // ruts
            SectionGroup.EXIT, // corner exit
            SectionGroup.EXIT, // acceleration bumps
            SectionGroup.WHOOPS, // whoops
            SectionGroup.WHOOPS, // rollers
            SectionGroup.LANDING, // jump face
            SectionGroup.LANDING, // landing
            SectionGroup.LANDING, // g-out
            SectionGroup.BRAKING, // downhill
            SectionGroup.CHOP, // rocks and roots
            SectionGroup.STRAIGHT); // sand
    assertThat(SectionGroup.where(Symptom.DIVES)).isEqualTo(SectionGroup.BRAKING);
    assertThat(SectionGroup.where(Symptom.BOTTOMS)).isEqualTo(SectionGroup.LANDING);
    for (Symptom symptom : Symptom.values()) {
      assertThat(SectionGroup.where(symptom)).as(symptom.name()).isNotNull();
    }
  }

  @Test
  void complaintsAreInOrderOfEndSymptomAndSection() {
    Complaint rear = new Complaint(End.REAR, Symptom.HARSH, SectionGroup.CHOP);
    Complaint dives = new Complaint(End.FRONT, Symptom.DIVES, SectionGroup.CHOP);
    Complaint braking = new Complaint(End.FRONT, Symptom.HARSH, SectionGroup.BRAKING);
    assertThat(Stream.of(rear, dives, braking, CHOP).sorted())
        .containsExactly(CHOP, braking, dives, rear);
  }
}
