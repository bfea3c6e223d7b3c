package rutbook.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Bite;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.Role;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.notebook.Timeline;
import rutbook.notebook.When;

/** How a rider writes, what was asked and answered, and what is reckoned with besides. */
class RatingsTest {
  private static final Feel HARSH = Feel.of(End.FRONT, Section.SQUARE_EDGES, Symptom.HARSH, 3);
  private static final Feel DIVES = Feel.of(End.FRONT, Section.CORNER_ENTRY, Symptom.DIVES, 2);
  private static final Complaint CHOP = Complaint.of(HARSH);

  private static List<Ride> rides(Feel... each) {
    List<Moto> motos = new ArrayList<>();
    for (Feel feel : each) {
      motos.add(Bench.moto("m" + motos.size(), List.of(), List.of(feel)));
    }
    return rides(motos);
  }

  private static List<Ride> rides(List<Moto> motos) {
    Notebook notebook =
        Bench.notebook().with(Bench.session("s", Bench.SPRING, Bench.HOLLOW, Bench.setup(), motos));
    return Ride.of(Timeline.of(notebook, Bench.BIKE));
  }

  private static RatingHabit habit(int... severities) {
    Feel[] feel = new Feel[severities.length];
    for (int i = 0; i < feel.length; i++) {
      feel[i] = HARSH.withSeverity(severities[i]);
    }
    return RatingHabit.of(rides(feel));
  }

  @Test
  void evenNumbersAloneAreACoarseHand() {
    assertThat(habit(2, 4, 2, 4).coarse()).isTrue();
    assertThat(habit(2, 4, 3, 4).coarse()).isFalse();
    assertThat(habit(3, 4, 2, 4).coarse()).as("whichever comes first").isFalse();
    assertThat(habit(2, 4, 2).coarse()).as("too few to tell").isFalse();
    assertThat(habit(0, 2, 4, 2).coarse()).as("nothing felt is nothing told").isFalse();
  }

  @Test
  void whoNeverWritesWhatIsSmallIsSilentAboutIt() {
    assertThat(habit(2, 3, 5, 2).silent()).isTrue();
    assertThat(habit(2, 3, 1, 2).silent()).isFalse();
    assertThat(habit(1, 3, 3, 2).silent()).isFalse();
    assertThat(habit(2, 3, 0, 2, 4).silent()).isFalse();
    assertThat(habit(2, 3, 5).silent()).as("too few to tell").isFalse();
  }

  @Test
  void whoWritesWhatWasNeverFeltIsThorough() {
    assertThat(habit(0, 3, 2).thorough()).isTrue();
    assertThat(habit(3, 0, 0).thorough()).as("gone is not the same as never there").isFalse();
    assertThat(RatingHabit.of(rides(HARSH, DIVES.withSeverity(0))).thorough()).isTrue();
    assertThat(RatingHabit.of(List.of())).isEqualTo(new RatingHabit(false, false, false));
  }

  private static Rule rule(String id, Symptom symptom, Optional<Bite> bite) {
    return new Rule(
        id,
        End.FRONT,
        symptom,
        Set.of(),
        bite,
        Optional.empty(),
        Role.FORK_COMPRESSION,
        0.4,
        false,
        "made up");
  }

  private static final RuleBook BOOK =
      new RuleBook(
          "test",
          List.of(
              rule("harsh", Symptom.HARSH, Optional.of(Bite.DEFLECTS)),
              rule("dives", Symptom.DIVES, Optional.empty())));
  private static final List<Role> ROLES = List.of(Role.FORK_COMPRESSION);
  private static final Complaint BROUGHT =
      new Complaint(End.FRONT, Symptom.DIVES, SectionGroup.BRAKING);

  private static Considered considered(List<Ride> rides, boolean thorough, List<Role> roles) {
    return Considered.of(rides, new RatingHabit(false, false, thorough), BOOK, roles);
  }

  /** A change of compression could bring diving, which nobody wrote of. */
  @Test
  void whatAChangeCouldBringIsReckonedWithBehindWhatWasWritten() {
    assertThat(considered(rides(HARSH), false, ROLES))
        .isEqualTo(new Considered(List.of(CHOP, BROUGHT), 1));
    assertThat(considered(rides(HARSH), true, ROLES))
        .as("who writes zeros, too, would have written it")
        .isEqualTo(new Considered(List.of(CHOP), 1));
    assertThat(considered(rides(HARSH), false, List.of(Role.SHOCK_REBOUND)))
        .as("this bike has no such adjuster")
        .isEqualTo(new Considered(List.of(CHOP), 1));
    assertThat(considered(List.of(), false, ROLES)).isEqualTo(new Considered(List.of(), 0));
  }

  @Test
  void whatWasWrittenElsewhereIsNotAddedAgain() {
    Feel divesOnJumps = Feel.of(End.FRONT, Section.LANDING, Symptom.DIVES, 2);
    assertThat(considered(rides(HARSH, divesOnJumps), false, ROLES).all())
        .containsExactlyInAnyOrder(CHOP, Complaint.of(divesOnJumps));
    Feel rear = Feel.of(End.REAR, Section.CORNER_ENTRY, Symptom.DIVES, 2);
    assertThat(considered(rides(HARSH, rear), false, ROLES).all())
        .as("the other end is another thing")
        .contains(BROUGHT)
        .hasSize(3);
  }

  private static Feel answered(Optional<Bite> bite, Optional<When> when) {
    return new Feel(HARSH.end(), HARSH.section(), HARSH.symptom(), 3, bite, when);
  }

  @Test
  void theLastAnswerCounts() {
    Feel sinks = answered(Optional.of(Bite.SINKS), Optional.empty());
    Feel later = answered(Optional.empty(), Optional.of(When.LATER_BUMPS));
    assertThat(Questions.lastAnswered(CHOP, rides(HARSH, DIVES))).isEmpty();
    assertThat(Questions.lastAnswered(CHOP, rides(sinks, HARSH, DIVES))).contains(sinks);
    assertThat(Questions.lastAnswered(CHOP, rides(sinks, later, HARSH))).contains(later);
    assertThat(Questions.lastAnswered(Complaint.of(DIVES), rides(sinks))).isEmpty();
  }

  @Test
  void aQuestionIsOpenWhileItsAnswerWouldDecideARule() {
    assertThat(Questions.open(CHOP, rides(HARSH), BOOK)).isTrue();
    for (Bite bite : Bite.values()) {
      Feel said = answered(Optional.of(bite), Optional.empty());
      assertThat(Questions.open(CHOP, rides(said, HARSH), BOOK)).as(bite.name()).isFalse();
    }
    assertThat(Questions.open(Complaint.of(DIVES), rides(DIVES), BOOK))
        .as("no rule asks")
        .isFalse();
    assertThat(Questions.open(CHOP, rides(HARSH), RuleBook.none())).isFalse();
  }

  /** Each step of noise is about a quarter more: a weight of 0.4 is two steps, a test one. */
  @Test
  void aDoubtedMotoAndATestAreLessSure() {
    Moto plain = Bench.moto("a", List.of(), List.of(HARSH));
    Moto doubted = plain.withReport(plain.report().marked(true));
    Moto test =
        new Moto(plain.id(), MotoKind.TEST, List.of(), plain.report(), Optional.empty(), "");
    assertThat(only(plain).weight()).isEqualTo(1);
    assertThat(only(doubted).weight()).isEqualTo(0.4);
    assertThat(only(test).weight()).isEqualTo(0.5);
    assertThat(only(plain).unsure(0)).isZero();
    assertThat(only(doubted).unsure(0)).isEqualTo(2);
    assertThat(only(test).unsure(0)).isEqualTo(1);
    assertThat(only(plain).unsure(0.5)).isEqualTo(2);
    assertThat(only(doubted).unsure(1)).isEqualTo(Math.min(6, RatingChances.MOST_UNSURE));
  }

  private static Ride only(Moto moto) {
    return rides(List.of(moto)).get(0);
  }
}
