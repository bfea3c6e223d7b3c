package rutbook.ui.rebuild;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import rutbook.edit.Edit;
import rutbook.edit.Editor;
import rutbook.edit.EntryEdit;
import rutbook.json.NotebookJson;
import rutbook.notebook.Bike;
import rutbook.notebook.Dice;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Instrument;
import rutbook.notebook.Notebook;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Outcome;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.JobBounds;
import rutbook.rebuild.Plan;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Step;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.words.Phrases;
import rutbook.words.WindowWords;

/**
 * What holds for every plan, through the bench's own logic: whatever is typed and touched on
 * whatever bike, nothing beyond the sheet is chosen, what is found is kept, no step is passed
 * before those it rests on, the steps stay the same, and undo goes all the way back.
 */
class AtStepTest {
  private static final EntryId JOB = new EntryId("job-at-the-bench");
  private static final Instant NOON = Instant.parse("2026-05-03T12:00:00Z");
  private static final WindowWords WORDS = new WindowWords(Locale.UK);
  private static final List<String> RUBBISH =
      List.of(
          "", " ", "abc", "-3", "12 mm", "999999999999999", "1,5", "1.234.567", "5 %", "½", "٣");

  @Property(tries = 25, seed = "71")
  void whateverIsTouchedTheBoundsOfThePlanHold(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    walk(notebook, new Dice(new Random(seed)), 40);
  }

  @Tag("long")
  @Property(tries = 1_500, seed = "72")
  void whateverIsTouchedTheBoundsOfThePlanHoldAtLength(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    walk(notebook, new Dice(new Random(seed)), 150);
  }

  private static void walk(Notebook notebook, Dice dice, int touches) {
    Bike bike = dice.any(notebook.bikes());
    Timeline timeline = Timeline.of(notebook, bike.id());
    Optional<PlanFrom> from =
        PlanFrom.beginning(timeline, dice.any(Scope.class), dice.some(Renewed.class));
    if (from.isEmpty()) {
      return;
    }
    Head head = Head.of(JOB, bike.id(), timeline.lastDay().orElseThrow(), 9_000);
    Notebook begun =
        new EntryEdit.Add(
                new Entry.RebuildJob(head, from.get().job(), List.of(), Outcome.UNDER_WAY))
            .applyTo(notebook);
    Editor editor = new Editor(begun);
    List<StepId> ids = plan(editor).steps().stream().map(Step::id).toList();
    int made = 0;
    for (int i = 0; i < touches; i++) {
      Notebook before = editor.present();
      touch(editor, dice);
      made += editor.present().equals(before) ? 0 : 1;
      assertThat(plan(editor).steps().stream().map(Step::id).toList()).isEqualTo(ids);
      JobBounds.hold(plan(editor), job(editor));
    }
    assertThat(NotebookJson.read(NotebookJson.write(editor.present()))).isEqualTo(editor.present());
    for (int i = 0; i < made; i++) {
      editor.undo();
    }
    assertThat(editor.present()).isEqualTo(begun);
  }

  private static Entry.RebuildJob job(Editor editor) {
    return (Entry.RebuildJob) editor.present().entry(JOB).orElseThrow();
  }

  private static Plan plan(Editor editor) {
    return Jobs.plan(editor.present(), job(editor), Advisor.SILENT).orElseThrow();
  }

  /** One touch of a key at one step, mostly the next one, with something typed. */
  private static void touch(Editor editor, Dice dice) {
    Plan plan = plan(editor);
    Step step = dice.once(4) ? dice.any(plan.steps()) : plan.next().orElse(plan.steps().get(0));
    AtStep at = new AtStep(JOB, plan, step);
    switch (dice.below(8)) {
      case 0 -> {
        if (at.canSkip()) {
          editor.make(at.skip(dice.name(), NOON));
          assertThat(plan(editor).state(step)).isEqualTo(Plan.State.SKIPPED);
        }
      }
      case 1 -> {
        if (at.canBeginAgain()) {
          at.beginAgain().ifPresent(editor::make);
          assertThat(job(editor).done(step.otherwise().orElseThrow())).isEmpty();
        }
      }
      case 2 -> {
        if (at.countDiffers()) {
          at.trustNotebook(NOON).ifPresent(editor::make);
          assertThat(new AtStep(JOB, plan(editor), step).countDiffers()).isFalse();
        }
      }
      default -> main(editor, at, dice);
    }
  }

  private static void main(Editor editor, AtStep at, Dice dice) {
    Step step = at.step();
    StepAnswer answer =
        new StepAnswer(
            WORDS, Phrases.english(dice.any(List.of(Display.METRIC, Display.US))), at.plan(), step);
    List<String> typed = new ArrayList<>();
    for (int i = 0; i < answer.boxes(); i++) {
      typed.add(typed(step, Side.values()[i], dice));
    }
    Optional<Entered> now =
        answer.boxes() > 0
            ? answer.entered(typed, dice.maybe(() -> dice.any(Instrument.class)))
            : Optional.of(new Entered.Ticked(step.ask().words() ? dice.name() : ""));
    for (String each : typed) {
      assertThat(answer.fault(each).map(String::isBlank)).isNotEqualTo(Optional.of(true));
    }
    AtStep.Main does = at.main(now);
    Optional<Edit> edit = at.enter(now, NOON);
    assertThat(edit.isPresent()).isEqualTo(does == AtStep.Main.ENTER);
    if (does == AtStep.Main.FIRST) {
      assertThat(at.plan().state(at.missing()))
          .as("before %s", step.id())
          .isIn(Plan.State.READY, Plan.State.WAITING, Plan.State.AGAIN);
    }
    edit.ifPresent(editor::make);
    if (edit.isPresent()) {
      assertThat(job(editor).done(step.id()).map(StepDone::entered)).isEqualTo(now);
      Plan.State state = plan(editor).state(step);
      assertThat(state == Plan.State.DONE || state == Plan.State.AGAIN).isTrue();
      assertThat(step.kind().finds() && state == Plan.State.AGAIN)
          .as("what is found at %s is kept", step.id())
          .isFalse();
    }
  }

  /** As it should be, beyond it, or rubbish. */
  private static String typed(Step step, Side side, Dice dice) {
    if (dice.once(5)) {
      return dice.any(RUBBISH);
    }
    Amount any = Amount.of(dice.below(30), step.ask().unit().orElseThrow());
    Amount right =
        step.target()
            .map(target -> target.reading())
            .or(() -> step.goal().noted())
            .flatMap(reading -> reading.leg(side).known())
            .orElse(any);
    return (dice.once(5) ? right.plus(right) : dice.once(5) ? any : right).toString();
  }
}
