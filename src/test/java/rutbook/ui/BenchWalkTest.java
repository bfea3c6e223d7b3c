package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rutbook.edit.Editor;
import rutbook.json.NotebookJson;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Outcome;
import rutbook.notebook.Reading;
import rutbook.notebook.Scope;
import rutbook.notebook.Side;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Jobs;
import rutbook.rebuild.Plan;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.rebuild.Step;
import rutbook.samples.Samples;

/**
 * A fork rebuild from the first touch to its end as a rider does it, with every touch and every key
 * counted. The seconds are the computer's; nobody was timed.
 */
class BenchWalkTest extends WindowTest {
  private int keys;

  @Override
  protected Optional<Notebook> notebook() {
    return Optional.of(Samples.season());
  }

  @Override
  protected void open(Notebook notebook) {
    editor = new Editor(notebook);
    window =
        Window.start(stage, StandIns.services(editor, LocalDate.of(2026, 10, 17), look(1024, 640)));
  }

  private void write(String id, String text) {
    keys += text.length();
    interact(() -> ((TextField) node(id)).setText(text));
    settle();
  }

  private Entry.RebuildJob job() {
    List<Entry.RebuildJob> jobs =
        Timeline.of(editor.present(), editor.present().bikes().get(0).id())
            .entries(Entry.RebuildJob.class);
    return jobs.get(jobs.size() - 1);
  }

  private Plan plan() {
    return Planner.plan(PlanFrom.of(editor.present(), job()).orElseThrow(), Advisor.SILENT);
  }

  /** What stands in a field already is not typed again. */
  private void fill(String field, String text) {
    Node node = scene().lookup("#" + field);
    boolean there =
        node instanceof TextField box
            && (box.getText().equals(text) || text.startsWith(box.getText() + " "))
            && !box.getText().isBlank();
    if (!there) {
      write(field, text);
    }
  }

  private void pass(Step step) {
    Optional<Reading> reading = BenchJobs.reading(step);
    for (Side side : Side.values()) {
      if (reading.isPresent() && (step.ask().bothLegs() || side == Side.LEFT)) {
        String field =
            step.ask().bothLegs()
                ? "bench-field-" + side
                : "bench-field" + step.leg().map(leg -> "-" + leg).orElse("");
        fill(field, reading.get().leg(side).known().orElseThrow().toString());
      }
    }
    touch("bench-next");
  }

  /** Wrong in every way that comes to a tired hand: each is refused with a sentence, and stays. */
  private void rubbish(Step step) {
    if (step.ask().form() == Ask.Form.TICK) {
      return;
    }
    boolean both = step.ask().bothLegs();
    String field = "bench-field" + (both ? "-LEFT" : step.leg().map(leg -> "-" + leg).orElse(""));
    Notebook before = editor.present();
    String wrong = step.ask().form() == Ask.Form.COUNT ? "3 mm" : "3 clicks";
    for (String typed : List.of("", "abc", "-3", "12 12", "99999999999999999", wrong)) {
      interact(() -> ((TextField) node(field)).setText(typed));
      settle();
      assertThat(node("bench-next").isDisabled()).as("%s at %s", typed, step.id()).isTrue();
      assertThat(((TextField) node(field)).getText()).isEqualTo(typed);
      boolean said =
          node("bench-entry").lookupAll(".error").stream()
              .anyMatch(each -> !((Label) each).getText().isBlank());
      assertThat(said)
          .as("a sentence for '%s' at %s", typed, step.id())
          .isEqualTo(!typed.isBlank());
    }
    press(node("bench-page"), KeyCode.PAGE_DOWN);
    press(node("bench-page"), KeyCode.PAGE_UP);
    assertThat(editor.present()).isSameAs(before);
  }

  /** The program ends in the middle and is started a week later: the notebook is all that stays. */
  private void aWeekLater() {
    Notebook saved = NotebookJson.read(NotebookJson.write(editor.present()));
    assertThat(saved).isEqualTo(editor.present());
    interact(
        () -> {
          stage.hide();
          stage = new Stage();
          open(saved);
        });
    settle();
    touch("rail-rebuild");
    touch("rebuild-bench");
  }

  private void walk(String name) {
    walk(name, Scope.FORK, false, false);
  }

  private void walk(String name, Scope scope, boolean interrupted, boolean wrong) {
    long begun = System.nanoTime();
    touch("rail-rebuild");
    if (scene().lookup("#baseline-keep") != null) {
      touch("baseline-keep");
    }
    touch("rebuild-new");
    if (scope != Scope.FORK) {
      touch("job-" + scope);
    }
    ComboBox<?> oils = (ComboBox<?>) node("job-oil");
    if (oils.getItems().size() > 1) {
      touches += 2;
      interact(() -> oils.getSelectionModel().select(1));
    }
    touch("job-start");
    touch("job-bench");
    int steps = plan().steps().size();
    for (int i = 0; plan().next().isPresent(); i++) {
      Step step = plan().next().orElseThrow();
      if (interrupted && i == steps / 2) {
        aWeekLater();
      }
      if (wrong) {
        rubbish(step);
      }
      pass(step);
      assertThat(plan().done(step.id())).as(step.id().text()).isPresent();
    }
    go(new Place.Job(job().id()));
    touch("end-BACK");
    assertThat(job().outcome()).isEqualTo(Outcome.BACK);
    assertThat(touches).as("a touch a step, and few more").isLessThan(steps + 30);
    Duration took = Duration.ofNanos(System.nanoTime() - begun);
    System.out.printf(
        "%s: %d steps, %d touches, %d keys, %.1f s of the computer%n",
        name, steps, touches, keys, took.toMillis() / 1000.0);
  }

  @Tag("long")
  @Test
  void theShockGoesThroughTheShopWithAWeekInBetween() {
    walk("shock through the shop", Scope.SHOCK, true, false);
  }

  @Tag("long")
  @Test
  void aForkIsRebuiltWithAWeekInBetweenAndRubbishAtEveryStep() {
    walk("sample, interrupted, with rubbish", Scope.BOTH, true, true);
  }

  @Tag("long")
  @Test
  void aForkWithSplitFunctionsIsRebuiltFromStartToEnd() {
    interact(() -> editor.open(Samples.splitFork()));
    settle();
    walk("split functions", Scope.FORK, true, false);
  }

  @Tag("long")
  @Test
  void anAirForkIsRebuiltFromStartToEnd() {
    interact(() -> editor.open(BenchJobs.of(Jobs.air(), Jobs.airSetup())));
    settle();
    walk("air fork", Scope.FORK, true, false);
  }

  @Tag("long")
  @Test
  void theSampleIsRebuiltFromStartToEnd() {
    walk("sample");
  }

  @Test
  void aNotebookMadeInTheWindowIsRebuiltFromStartToEnd() {
    interact(() -> editor.open(Notebook.empty(new NotebookId("walk"))));
    settle();
    touch("rail-log");
    touch("log-bike");
    write("start-name", "Blue 250");
    touch("start-next");
    write("start-FORK_COMPRESSION-now", "12");
    write("start-FORK_REBOUND-now", "11");
    touch("start-next");
    write("start-fill-least", "300");
    write("start-fill-most", "380");
    write("start-fill-now", "335 mL");
    touch("start-next");
    walk("made in the window");
  }
}
