package rutbook.ui.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Work away from the window's thread, with the turns taken by hand. */
class BackgroundTest {
  private final Deque<Runnable> worker = new ArrayDeque<>();
  private final List<Runnable> moments = new ArrayList<>();
  private final List<String> shown = new ArrayList<>();
  private final Background background =
      new Background(
          worker::add,
          Runnable::run,
          (length, action) -> {
            moments.add(action);
            return () -> moments.remove(action);
          });

  private void run(String label, String answer) {
    background.run(label, () -> answer, shown::add, fault -> shown.add("failed: " + fault));
  }

  private void passAMoment() {
    List.copyOf(moments).forEach(Runnable::run);
  }

  @Test
  void onlyTheLatestOfALabelIsShown() {
    run("log", "first");
    run("log", "second");
    run("other", "third");
    worker.forEach(Runnable::run);
    assertThat(shown).containsExactly("second", "third");
  }

  @Test
  void whatIsOvertakenIsNotEvenCalled() {
    List<String> called = new ArrayList<>();
    background.run("log", () -> called.add("first"), done -> {}, fault -> {});
    background.run("log", () -> called.add("second"), done -> {}, fault -> {});
    worker.forEach(Runnable::run);
    assertThat(called).containsExactly("second");
  }

  @Test
  void itIsBusyAfterAMomentAndUntilTheAnswer() {
    run("log", "answer");
    assertThat(background.busy().get()).isFalse();
    passAMoment();
    assertThat(background.busy().get()).isTrue();
    worker.remove().run();
    assertThat(background.busy().get()).isFalse();
    assertThat(shown).containsExactly("answer");
  }

  @Test
  void whatIsDoneInTimeIsNeverToldAsBusy() {
    run("log", "answer");
    worker.remove().run();
    assertThat(moments).isEmpty();
    assertThat(background.busy().get()).isFalse();
  }

  @Test
  void aFaultIsShownToo() {
    background.<String>run(
        "log",
        () -> {
          throw new IllegalStateException("broken");
        },
        shown::add,
        fault -> shown.add(fault.getMessage()));
    worker.remove().run();
    assertThat(shown).containsExactly("broken");
  }
}
