package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.Instrument;
import rutbook.notebook.Job;
import rutbook.notebook.Notebook;
import rutbook.notebook.Oil;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.samples.Samples;

/** A fill at the bench: what it does to the curve, what binds it, and which oil it is. */
class BenchFillTest extends WindowTest {
  @Override
  protected Optional<Notebook> notebook() {
    return Optional.of(at(StepKind.FILL));
  }

  private static Notebook at(StepKind kind) {
    Notebook season = Samples.season();
    Notebook begun = BenchJobs.begun(season, season.bikes().get(0).id(), Scope.FORK, Renewed.OIL);
    return BenchJobs.walkedTo(begun, step -> step.kind() == kind && isOuter(step));
  }

  private static boolean isOuter(Step step) {
    return step.setting().filter(it -> it.name().contains("Outer")).isPresent();
  }

  private void toTheBench() {
    go(new Place.Bench(BenchJobs.JOB, Optional.empty()));
  }

  private void write(String id, String text) {
    interact(() -> ((TextField) node(id)).setText(text));
    settle();
  }

  private String figures() {
    return node("fill-figures").getAccessibleText();
  }

  @Test
  void theBaselineItselfChangesNothing() {
    toTheBench();
    assertThat(figures())
        .contains("air force at the end: baseline 2218 N, now 2218 N, change 0 %")
        .contains("reserve from sag, 71 mm: baseline 556 J, now 556 J, change 0 %");
    assertThat(scene().lookup("#fill-curve")).isNotNull();
  }

  @Test
  void moreOilIsFeltAtTheEndAndHardlyAtMidStroke() {
    toTheBench();
    write("bench-field-LEFT", "355 mL");
    assertThat(figures())
        .contains("air force, mid-stroke: baseline 307 N, now 316 N, change +2.8 %")
        .contains("air force at the end: baseline 2218 N, now 2429 N, change +9.5 %");
  }

  @Test
  void theRoomBeforeItLocksIsSaidWithWhatItRestsOn() {
    toTheBench();
    assertThat(text("fill-room"))
        .contains("136 mL of air")
        .contains("99 mL more")
        .contains("measured");
    assertThat(text("fill-assumed")).contains("15 times").contains("without preload");
  }

  @Test
  void nothingIsDrawnOfAFillThatIsRefused() {
    toTheBench();
    write("bench-field-LEFT", "390 mL");
    assertThat(node("bench-next").isDisabled()).isTrue();
    assertThat(scene().lookup("#fill-figures")).isNull();
    write("bench-field-LEFT", "350 mL");
    assertThat(scene().lookup("#fill-figures")).isNotNull();
  }

  @Test
  void theSecondLegIsHeldBesideTheFirst() {
    toTheBench();
    assertThat(text("fill-legs")).contains("right leg counts as alike");
    write("bench-field-LEFT", "346 mL");
    touch("bench-next");
    Notebook filled =
        BenchJobs.walkedTo(
            editor.present(),
            step ->
                step.kind() == StepKind.FILL
                    && isOuter(step)
                    && step.leg().equals(Optional.of(Side.RIGHT)));
    interact(() -> editor.open(filled));
    toTheBench();
    write("bench-field-RIGHT", "347 mL");
    assertThat(text("fill-legs")).isEqualTo("Left 346 mL, right 347 mL: alike within 2 mL.");
    write("bench-field-RIGHT", "350 mL");
    assertThat(text("fill-legs"))
        .isEqualTo("Left 346 mL, right 350 mL: they may differ by 2 mL at most.");
  }

  @Test
  void whatItWasMeasuredWithIsOneTouchAway() {
    toTheBench();
    Step step = BenchJobs.plan(editor.present()).next().orElseThrow();
    touch("bench-with");
    touch("bench-with-RING_GAUGE");
    touch("bench-next");
    assertThat(entered(step).entered())
        .isEqualTo(
            new Entered.Measured(
                BenchJobs.reading(step).orElseThrow(), Optional.of(Instrument.RING_GAUGE)));
  }

  private StepDone entered(Step step) {
    return ((Entry.RebuildJob) editor.present().entry(BenchJobs.JOB).orElseThrow())
        .done(step.id())
        .orElseThrow();
  }

  @Test
  void theOilIsNamedWithHowMuchOfItGoesIntoALeg() {
    Oil oil = editor.present().shelf().oils().get(0);
    interact(() -> editor.open(poured(at(StepKind.FILL), oil)));
    toTheBench();
    assertThat(text("bench-oil"))
        .isEqualTo("Oil: " + oil.name() + ", 345 mL (11.67 fl oz) in this leg.");
    go(new Place.Job(BenchJobs.JOB));
    assertThat(text("job-oil-needed"))
        .isEqualTo(
            "Oil: "
                + oil.name()
                + ", 1112 mL (37.6 fl oz) in all by the targets; pumping and spills need more.");
  }

  /** The same job with an oil of the shelf. */
  private static Notebook poured(Notebook notebook, Oil oil) {
    Entry.RebuildJob job = (Entry.RebuildJob) notebook.entry(BenchJobs.JOB).orElseThrow();
    Job of = job.job();
    Job named =
        new Job(
            of.scope(),
            of.renewed(),
            of.baseline(),
            of.before(),
            of.sheetFrom(),
            Optional.of(oil.id()));
    return notebook.with(new Entry.RebuildJob(job.head(), named, job.done(), job.outcome()));
  }
}
