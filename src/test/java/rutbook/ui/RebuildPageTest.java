package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;

import java.util.List;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import rutbook.edit.Editor;
import rutbook.notebook.Bench;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Outcome;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Side;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.Plan;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.samples.Samples;

/** A rebuild through its pages: begun, walked at the bench, interrupted, mended and ended. */
class RebuildPageTest extends ApplicationTest {
  private Stage stage;
  private Editor editor;
  private Window window;
  private Scene scene;

  @Override
  public void start(Stage first) {
    stage = first;
    open(Samples.season());
  }

  private void open(Notebook notebook) {
    editor = new Editor(notebook);
    window =
        Window.start(
            stage,
            StandIns.services(
                editor,
                Timeline.of(notebook, notebook.bikes().get(0).id()).lastDay().orElseThrow()));
    scene = stage.getScene();
    window.go(new Place.Rebuild());
  }

  private void reopen(Notebook notebook) {
    interactNoWait(
        () -> {
          stage.hide();
          stage = new Stage();
          open(notebook);
        });
  }

  private void touch(String id) {
    interactNoWait(
        () -> {
          scene.getRoot().applyCss();
          assertThat(scene.lookup("#" + id)).as(id).isInstanceOf(ButtonBase.class);
          ((ButtonBase) scene.lookup("#" + id)).fire();
        });
  }

  private void type(String field, String text) {
    interactNoWait(
        () -> {
          scene.getRoot().applyCss();
          ((TextField) scene.lookup("#" + field)).setText(text);
        });
  }

  private String text(String id) {
    return ((Label) scene.lookup("#" + id)).getText();
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

  /** Enters a step as a careful rider does: what is asked, on each leg, and on. */
  private void enter(Step step) {
    BenchJobs.reading(step)
        .ifPresent(
            reading -> {
              if (step.ask().bothLegs()) {
                for (Side side : Side.values()) {
                  type("bench-field-" + side, typed(reading, side));
                }
              } else {
                type(
                    "bench-field" + step.leg().map(side -> "-" + side).orElse(""),
                    typed(reading, Side.LEFT));
              }
            });
    touch("bench-next");
  }

  private static String typed(Reading reading, Side side) {
    return reading.leg(side).known().orElseThrow().toString();
  }

  private void walkTo(StepKind kind) {
    while (plan().next().orElseThrow().kind() != kind) {
      pass(plan().next().orElseThrow());
    }
  }

  private void walkToTheEnd() {
    while (plan().next().isPresent()) {
      pass(plan().next().orElseThrow());
    }
  }

  /** Entered as it should be, a step is passed. */
  private void pass(Step step) {
    enter(step);
    assertThat(plan().findings(step.id())).as("what %s shows", step.id()).isEmpty();
    assertThat(plan().next().map(Step::id)).isNotEqualTo(Optional.of(step.id()));
  }

  private void begin(Notebook notebook, Scope scope, Renewed... renewed) {
    reopen(BenchJobs.begun(notebook, notebook.bikes().get(0).id(), scope, renewed));
    interact(() -> window.go(new Place.Bench(BenchJobs.JOB, Optional.empty())));
  }

  @Test
  void aWholeForkJobWithAnInterruptionEndsOnTheBaseline() {
    touch("rebuild-new");
    touch("job-SEALS");
    touch("job-start");
    touch("job-bench");
    walkTo(StepKind.FILL);
    int done = job().done().size();
    EntryId id = job().id();
    reopen(editor.present());
    touch("rebuild-bench");
    assertThat(job().done()).hasSize(done);
    walkToTheEnd();
    interact(() -> window.go(new Place.Job(id)));
    interact(() -> ((CheckBox) scene.lookup("#job-keep")).setSelected(true));
    touch("end-BACK");
    assertThat(job().outcome()).as("a new baseline needs a reason").isEqualTo(Outcome.UNDER_WAY);
    type("job-reason", "fresh oil and seals");
    int before = baselines().size();
    touch("end-BACK");
    assertThat(job().outcome()).isEqualTo(Outcome.BACK);
    assertThat(baselines()).hasSize(before + 1);
    Entry.Baseline kept = baselines().get(before);
    assertThat(kept.rebuild()).contains(id);
    assertThat(
            kept.setup()
                .reading(Samples.season().bikes().get(0).latestSheet().settings().get(0).id()))
        .isPresent();
    interact(editor::undo);
    assertThat(job().outcome()).isEqualTo(Outcome.UNDER_WAY);
    assertThat(baselines()).hasSize(before);
  }

  private List<Entry.Baseline> baselines() {
    return Timeline.of(editor.present(), job().bike()).entries(Entry.Baseline.class);
  }

  @Test
  void aFillOverItsLimitIsRefusedWhereItIsTyped() {
    begin(Bench.notebook(), Scope.FORK, Renewed.OIL);
    walkTo(StepKind.FILL);
    Notebook before = editor.present();
    type("bench-field-LEFT", "999 mL");
    assertThat(scene.lookup("#bench-next").isDisabled()).isTrue();
    assertThat(((TextField) scene.lookup("#bench-field-LEFT")).getText()).isEqualTo("999 mL");
    assertThat(scene.lookup("#bench-field-LEFT").getStyleClass()).contains("refused");
    assertThat(editor.present()).isSameAs(before);
  }

  @Test
  void unequalLegsAreToldAndDoneAgain() {
    begin(Bench.notebook(), Scope.FORK, Renewed.OIL);
    walkTo(StepKind.PLACE_FILL);
    Step step = plan().next().orElseThrow();
    Reading wanted = BenchJobs.reading(step).orElseThrow();
    type("bench-field-LEFT", typed(wanted, Side.LEFT));
    type(
        "bench-field-RIGHT", wanted.leg(Side.RIGHT).known().orElseThrow().plus(ml("3")).toString());
    touch("bench-next");
    assertThat(plan().state(step)).isEqualTo(Plan.State.AGAIN);
    assertThat(scene.lookup("#bench-findings")).isNotNull();
    assertThat(plan().next()).contains(step);
    enter(step);
    assertThat(plan().state(plan().step(step.id()).orElseThrow())).isEqualTo(Plan.State.DONE);
  }

  @Test
  void aCountUnlikeTheNotebookAsksWhichToTrust() {
    begin(Bench.notebook(), Scope.FORK, Renewed.OIL);
    walkTo(StepKind.COUNT);
    Step step = plan().next().orElseThrow();
    Reading noted = step.goal().noted().orElseThrow();
    type("bench-field-LEFT", typed(noted, Side.LEFT));
    type(
        "bench-field-RIGHT",
        noted.leg(Side.RIGHT).known().orElseThrow().plus(clicks(2)).toString());
    touch("bench-next");
    assertThat(scene.lookup("#bench-findings")).isNotNull();
    touch("bench-trust-notebook");
    assertThat(job().done(step.id()).orElseThrow().entered()).isEqualTo(new Entered.Counted(noted));
  }

  @Test
  void countingAlongFillsBothLegsOneAfterTheOther() {
    begin(Bench.notebook(), Scope.FORK, Renewed.OIL);
    walkTo(StepKind.COUNT);
    for (int leg = 0; leg < 2; leg++) {
      for (int i = 0; i < 12; i++) {
        touch("count-plus");
      }
      touch("count-done");
    }
    Step step = plan().next().orElseThrow();
    touch("bench-next");
    assertThat(job().done(step.id()).orElseThrow().entered())
        .isEqualTo(new Entered.Counted(Reading.of(clicks(12), clicks(12))));
  }

  @Test
  void aStepThatCannotBeDoneIsLeftOutWithAReason() {
    begin(Bench.notebook(), Scope.FORK, Renewed.OIL);
    walkTo(StepKind.WHEEL_OFF);
    Step step = plan().next().orElseThrow();
    touch("bench-cannot");
    touch("skip-tool");
    assertThat(plan().state(step)).isEqualTo(Plan.State.SKIPPED);
    assertThat(job().done(step.id()).orElseThrow().entered())
        .isEqualTo(new Entered.Skipped("Tool missing"));
  }

  @Test
  void whatDidNotComeOutIsBegunAgain() {
    begin(Bench.notebook(), Scope.FORK, Renewed.OIL);
    walkTo(StepKind.ROD_RETURNS);
    Step rod = plan().next().orElseThrow();
    touch("bench-again");
    assertThat(plan().next().map(Step::id)).isEqualTo(rod.otherwise());
  }

  @Test
  void theShockGoesThroughTheShopAndComesBack() {
    begin(Samples.season(), Scope.SHOCK, Renewed.OIL);
    walkTo(StepKind.SHOP_RETURN);
    interact(() -> window.go(new Place.Job(BenchJobs.JOB)));
    touch("end-AT_THE_SHOP");
    assertThat(job().outcome()).isEqualTo(Outcome.AT_THE_SHOP);
    interact(() -> window.go(new Place.Rebuild()));
    touch("rebuild-plan");
    touch("end-UNDER_WAY");
    interact(() -> window.go(new Place.Bench(BenchJobs.JOB, Optional.empty())));
    walkToTheEnd();
    assertThat(plan().findings()).isEmpty();
  }

  @Test
  void aForkWithSplitFunctionsIsWalkedWithoutAskingTheOtherLeg() {
    begin(Samples.splitFork(), Scope.FORK, Renewed.OIL);
    walkToTheEnd();
    assertThat(plan().steps()).allMatch(step -> plan().state(step) == Plan.State.DONE);
  }

  @Test
  void theBenchIsWalkedWithTheKeyboardAlone() {
    begin(Bench.notebook(), Scope.FORK, Renewed.OIL);
    walkTo(StepKind.FILL);
    Step step = plan().next().orElseThrow();
    press("bench-field-LEFT", KeyCode.ENTER);
    assertThat(plan().done(step.id())).isPresent();
    press("bench-page", KeyCode.PAGE_UP);
    assertThat(text("bench-title")).contains("Fill");
    press("bench-page", KeyCode.ESCAPE);
    assertThat(scene.lookup("#job-page")).isNotNull();
  }

  private void press(String id, KeyCode code) {
    interactNoWait(
        () ->
            scene
                .lookup("#" + id)
                .fireEvent(
                    new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false)));
  }

  @Test
  void aBikeThatDriftedIsPutBackOneSettingAMoto() {
    reopen(Samples.season());
    int before = Timeline.of(editor.present(), job().bike()).entries().size();
    touch("back-one");
    touch("back-done");
    assertThat(Timeline.of(editor.present(), job().bike()).entries()).hasSize(before + 1);
    assertThat(
            Timeline.of(editor.present(), job().bike())
                .latest(Entry.Adjusted.class)
                .orElseThrow()
                .changes())
        .hasSize(1);
  }

  @Test
  void aServiceItemDoneTodayStartsItsHoursAgain() {
    Entry.RebuildJob any = job();
    String item =
        editor.present().shelf().bike(any.bike()).orElseThrow().latestSheet().services().stream()
            .reduce((a, b) -> b)
            .orElseThrow()
            .id()
            .text();
    touch("service-done-" + item);
    assertThat(
            Timeline.of(editor.present(), any.bike())
                .latest(Entry.Serviced.class)
                .orElseThrow()
                .items())
        .hasSize(1);
  }
}
