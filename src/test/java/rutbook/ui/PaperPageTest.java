package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.ml;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;

/** A work sheet printed, written on at the bench, and entered afterwards in one go. */
class PaperPageTest extends WindowTest {
  private static final LocalDate DAY_BEFORE = TODAY.minusDays(1);

  @Override
  protected Optional<Notebook> notebook() {
    Notebook bench = Bench.notebook();
    return Optional.of(BenchJobs.begun(bench, bench.bikes().get(0).id(), Scope.FORK, Renewed.OIL));
  }

  private void toTheSheet() {
    go(new Place.Job(BenchJobs.JOB));
    touch("paper-enter");
  }

  private Entry.RebuildJob job() {
    return (Entry.RebuildJob) editor.present().entry(BenchJobs.JOB).orElseThrow();
  }

  private Plan plan() {
    return BenchJobs.plan(editor.present());
  }

  private static String slug(Step step) {
    return step.id().text().replace(':', '-');
  }

  private void write(String id, String text) {
    interact(() -> ((TextField) node(id)).setText(text));
  }

  /** Fills in a row as a careful rider does. */
  private void write(Step step) {
    if (step.ask().form() == Ask.Form.TICK) {
      return;
    }
    Reading reading = BenchJobs.reading(step).orElseThrow();
    for (Side side : Side.values()) {
      String leg = reading.leg(side).known().orElseThrow().toString();
      if (step.ask().bothLegs()) {
        write("paper-box-" + slug(step) + "-" + side, leg);
      } else if (side == Side.LEFT) {
        write("paper-box-" + slug(step), leg);
      }
    }
  }

  private Step step(StepKind kind) {
    return plan().steps().stream().filter(each -> each.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void aWholeSheetIsTakenWithOneTouchAndTakenBackWithOneUndo() {
    toTheSheet();
    List<Step> steps = plan().steps();
    steps.forEach(this::write);
    touch("paper-ticks");
    write("paper-day", DAY_BEFORE.toString());
    touch("paper-take");
    assertThat(node("job-page")).isNotNull();
    assertThat(job().done()).hasSameSizeAs(steps);
    assertThat(job().done()).allMatch(done -> done.doneOn().equals(Optional.of(DAY_BEFORE)));
    assertThat(plan().next()).isEmpty();
    assertThat(plan().findings()).isEmpty();
    interact(editor::undo);
    assertThat(job().done()).isEmpty();
  }

  @Test
  void whatStandsThereIsWhatTheBenchWouldHaveEntered() {
    toTheSheet();
    plan().steps().forEach(this::write);
    touch("paper-ticks");
    touch("paper-take");
    Notebook walked = BenchJobs.walkedTo(notebook().orElseThrow(), step -> false);
    List<StepDone> atTheBench =
        ((Entry.RebuildJob) walked.entry(BenchJobs.JOB).orElseThrow()).done();
    assertThat(job().done().stream().map(StepDone::entered))
        .containsExactlyElementsOf(
            plan().steps().stream().map(step -> entered(atTheBench, step)).toList());
  }

  private static Entered entered(List<StepDone> done, Step step) {
    return done.stream()
        .filter(each -> each.step().equals(step.id()))
        .findFirst()
        .orElseThrow()
        .entered();
  }

  @Test
  void aFaultStandsUnderItsRowAndNothingIsTaken() {
    toTheSheet();
    Step fill = step(StepKind.FILL);
    write("paper-box-hours", "12.5 h");
    write("paper-box-" + slug(fill), "999 mL");
    Notebook before = editor.present();
    touch("paper-take");
    assertThat(text("paper-error-" + slug(fill))).contains("999 mL").contains("380 mL");
    assertThat(text("paper-faults")).startsWith("One row cannot be taken");
    assertThat(editor.present()).isSameAs(before);
    assertThat(((TextField) node("paper-box-" + slug(fill))).getText()).isEqualTo("999 mL");
    write("paper-box-" + slug(fill), "345 mL");
    touch("paper-take");
    assertThat(job().done()).hasSize(2);
    assertThat(job().done(fill.id()).orElseThrow().entered())
        .isEqualTo(new Entered.Measured(Reading.of(ml("345")), Optional.empty()));
  }

  @Test
  void oneLegAloneIsAskedForTheOther() {
    toTheSheet();
    Step count = step(StepKind.COUNT);
    write("paper-box-" + slug(count) + "-LEFT", "12");
    touch("paper-take");
    assertThat(text("paper-error-" + slug(count)))
        .isEqualTo("Fill in both legs, or leave both blank.");
  }

  @Test
  void whatIsBlankStaysOpenOrIsLeftOutWithAReason() {
    toTheSheet();
    write("paper-box-hours", "12.5");
    touch("paper-take");
    assertThat(job().done()).hasSize(1);
    assertThat(plan().next()).isPresent();
    touch("paper-enter");
    touch("paper-out");
    touch("paper-take");
    assertThat(text("paper-faults")).isEqualTo("Say why it was left out.");
    write("paper-why", "not written on the sheet");
    touch("paper-take");
    assertThat(job().done()).hasSameSizeAs(plan().steps());
    assertThat(job().done().get(1).entered())
        .isEqualTo(new Entered.Skipped("not written on the sheet"));
  }

  @Test
  void theDayMustBeOneThatHasBeen() {
    toTheSheet();
    write("paper-box-hours", "12.5");
    write("paper-day", "yesterday");
    touch("paper-take");
    assertThat(job().done()).isEmpty();
    assertThat(text("paper-day-error")).contains(TODAY.toString());
    write("paper-day", TODAY.plusDays(1).toString());
    touch("paper-take");
    assertThat(job().done()).isEmpty();
    write("paper-day", TODAY.toString());
    touch("paper-take");
    assertThat(job().done()).hasSize(1);
  }

  @Test
  void theDayOfAStepFromPaperIsKeptBesideTheTimeOfItsEntry() {
    toTheSheet();
    write("paper-box-hours", "12.5 h");
    write("paper-day", DAY_BEFORE.toString());
    touch("paper-take");
    Node row = node("step-hours");
    assertThat(
            row.lookupAll(".label").stream()
                .map(each -> ((javafx.scene.control.Label) each).getText()))
        .anyMatch(said -> said.startsWith("12.5 h, done on 15 May 2026, entered from paper"));
  }

  @Test
  void aJobOfTwoDaysHasADayFromARowOnAndOneDayForAllOtherwise() {
    toTheSheet();
    assertThat(node("paper-on-stand").isVisible()).as("only at choice").isFalse();
    write("paper-day", DAY_BEFORE.toString());
    touch("paper-ticks");
    write("paper-box-hours", "12.5 h");
    touch("paper-days");
    write("paper-on-stand", "last week");
    touch("paper-take");
    assertThat(job().done()).isEmpty();
    assertThat(text("paper-error-stand")).contains(TODAY.toString());
    write("paper-on-stand", TODAY.toString());
    assertThat(((TextField) node("paper-on-loosen-caps")).getPromptText())
        .isEqualTo(TODAY.toString());
    touch("paper-take");
    assertThat(job().done(new StepId("hours")).orElseThrow().doneOn()).contains(DAY_BEFORE);
    assertThat(job().done(new StepId("stand")).orElseThrow().doneOn()).contains(TODAY);
    assertThat(job().done(new StepId("loosen-caps")).orElseThrow().doneOn()).contains(TODAY);
  }

  @Test
  void aReasonTooLongIsRefusedInASentence() {
    toTheSheet();
    touch("paper-out");
    write("paper-why", "x".repeat(500));
    touch("paper-take");
    assertThat(job().done()).isEmpty();
    assertThat(text("paper-faults")).contains("120");
  }

  @Test
  void theWorkSheetIsPutOnPaperFromThePlan() {
    go(new Place.Job(BenchJobs.JOB));
    touch("paper-work");
    assertThat(text("paper-said")).startsWith("work-sheet.pdf lies beside the notebook");
    touch("paper-work-html");
    assertThat(text("paper-said")).startsWith("work-sheet.html");
    assertThat(scene().lookup("#paper-shop")).as("a fork goes to no shop").isNull();
  }

  @Test
  void theShopSheetIsPutOnPaperWhereTheShockIsHandedOver() {
    Notebook bench = Bench.notebook();
    Notebook shock =
        BenchJobs.walkedTo(
            BenchJobs.begun(bench, bench.bikes().get(0).id(), Scope.SHOCK, Renewed.OIL),
            step -> step.kind() == StepKind.SHOP_SHEET);
    interact(() -> editor.open(shock));
    go(new Place.Bench(BenchJobs.JOB, Optional.empty()));
    touch("paper-shop");
    assertThat(text("paper-said")).startsWith("shop-sheet.pdf");
  }
}
