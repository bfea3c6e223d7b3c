package rutbook.rebuild;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Side;
import rutbook.notebook.StepId;

class HabitsTest {
  private static Step step(StepKind kind, String... after) {
    return Step.of(kind, Subject.BIKE)
        .after(Set.of(after).stream().map(StepId::new).collect(Collectors.toSet()));
  }

  @Test
  void aPrerequisiteThatIsMissingIsNamed() {
    assertThatThrownBy(() -> Habits.inOrder(List.of(step(StepKind.STAND, "nowhere"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("stand waits for unknown nowhere");
  }

  @Test
  void stepsThatWaitForEachOtherAreNamed() {
    assertThatThrownBy(
            () ->
                Habits.inOrder(List.of(step(StepKind.STAND, "spin"), step(StepKind.SPIN, "stand"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("steps in a circle: [stand after [spin], spin after [stand]]");
    assertThatThrownBy(() -> step(StepKind.STAND, "stand")).hasMessageContaining("stand");
  }

  @Test
  void oneLegIsDoneBeforeTheOtherAndTheLeftOneFirst() {
    List<Step> legs = new ArrayList<>();
    for (Side leg : List.of(Side.RIGHT, Side.LEFT)) {
      Step strip = Step.of(StepKind.STRIP, Subject.of(leg));
      legs.add(strip);
      legs.add(Step.of(StepKind.DRAIN, Subject.of(leg)).after(Set.of(strip.id())));
    }
    assertThat(Jobs.ids(Habits.inOrder(legs)))
        .containsExactly("strip:left", "drain:left", "strip:right", "drain:right");
  }

  @Test
  void stepsThatHabitsDoNotTellApartKeepTheirOrder() {
    Plan plan = Jobs.plan(Scope.BOTH, Renewed.OIL);
    List<Step> counts =
        plan.steps().stream()
            .filter(each -> each.kind() == StepKind.COUNT)
            .map(each -> Step.of(each.kind(), each.subject()))
            .toList();
    List<Step> mixed = new ArrayList<>(counts);
    Collections.shuffle(mixed, new Random(7));
    assertThat(mixed).isNotEqualTo(counts);
    assertThat(Habits.inOrder(mixed)).isEqualTo(mixed);
  }
}
