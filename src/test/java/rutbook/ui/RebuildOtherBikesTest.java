package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import rutbook.edit.ShelfEdit;
import rutbook.notebook.Bench;
import rutbook.notebook.Entered;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.StepId;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Caution;
import rutbook.rebuild.JobBounds;
import rutbook.rebuild.Jobs;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.words.Phrases;
import rutbook.words.PlanWords;

/** Rebuilds that do not go the usual way, through the page, and what holds on every way. */
class RebuildOtherBikesTest extends WindowTest {
  @Override
  protected Optional<Notebook> notebook() {
    return Optional.of(Bench.notebook());
  }

  private void begin(Notebook notebook, Scope scope, Renewed... renewed) {
    interact(() -> editor.open(BenchJobs.begun(notebook, Bench.BIKE, scope, renewed)));
    toTheBench();
  }

  private void toTheBench() {
    go(new Place.Bench(BenchJobs.JOB, Optional.empty()));
  }

  private Plan plan() {
    return BenchJobs.plan(editor.present());
  }

  private Step next() {
    return plan().next().orElseThrow();
  }

  private Entry.RebuildJob job() {
    return (Entry.RebuildJob) editor.present().entry(BenchJobs.JOB).orElseThrow();
  }

  private void write(String field, String text) {
    interact(() -> ((TextField) node(field)).setText(text));
    settle();
  }

  private void walkTo(StepKind kind) {
    Notebook walked = BenchJobs.walkedTo(editor.present(), step -> step.kind() == kind);
    interact(() -> editor.open(walked));
    toTheBench();
  }

  private List<String> said() {
    List<String> said = new ArrayList<>();
    node("bench-step").lookupAll(".label").forEach(each -> said.add(((Label) each).getText()));
    return said;
  }

  @Test
  void anAirForkIsNotTouchedBeforeItsPressureIsReleased() {
    begin(BenchJobs.of(Jobs.air(), Jobs.airSetup()), Scope.FORK, Renewed.OIL);
    walkTo(StepKind.AIR_RELEASE);
    assertThat(said())
        .contains("Release the air pressure until the gauge reads 0")
        .contains(
            "Release air pressure before anything is loosened, in the manual's order.",
            "The service manual rules on torques, fills and intervals.");
    Step caps =
        plan().steps().stream()
            .filter(step -> step.kind() == StepKind.LOOSEN_CAPS)
            .findFirst()
            .orElseThrow();
    go(new Place.Bench(BenchJobs.JOB, Optional.of(caps.id())));
    assertThat(text("bench-next")).startsWith("First: ");
    touch("bench-next");
    assertThat(job().done(caps.id())).as("it waits for what comes before").isEmpty();
    toTheBench();
    touch("bench-next");
    assertThat(next().kind()).isEqualTo(StepKind.BLEED_AIR);
    walkTo(StepKind.PLACE_AIR);
    assertThat(text("bench-value")).isEqualTo("10 bar");
    write("bench-field-LEFT", "13 bar");
    assertThat(node("bench-next").isDisabled()).as("beyond the sheet").isTrue();
    write("bench-field-LEFT", "10 bar");
    touch("bench-next");
    walkTo(StepKind.CONFIRM);
    touch("bench-next");
    assertThat(plan().next()).isEmpty();
  }

  @Test
  void aBaselineAboveTheLimitIsHeldAndSaysWhatIsMissing() {
    Setup much = Bench.setup().with(Placed.found(Bench.FORK_OIL, Reading.bothLegs(ml("390"))));
    begin(BenchJobs.of(Bench.sheet(), much), Scope.FORK, Renewed.OIL);
    Notebook walked =
        BenchJobs.walkedTo(
            editor.present(),
            step -> step.kind() == StepKind.FILL && step.leg().equals(Optional.of(Side.LEFT)));
    interact(() -> editor.open(walked));
    toTheBench();
    assertThat(text("bench-value")).isEqualTo("380 mL");
    assertThat(said())
        .anyMatch(line -> line.contains("wanted 390 mL") && line.contains("10 mL short"));
    write("bench-field-LEFT", "390 mL");
    assertThat(node("bench-next").isDisabled()).isTrue();
    write("bench-field-LEFT", "380 mL");
    touch("bench-next");
    assertThat(plan().findings()).isEmpty();
  }

  @Test
  void aShockComesBackWithANewSheetAndTheJobGoesOn() {
    begin(Bench.notebook(), Scope.SHOCK, Renewed.OIL, Renewed.VALVING);
    walkTo(StepKind.SHOP_RETURN);
    touch("bench-sheet");
    assertThat(node("bike-page")).isNotNull();
    Sheet stiffer = Bench.sheet().with(TODAY, "valving by the shop");
    interact(() -> editor.make(new ShelfEdit.PutSheet(Bench.BIKE, stiffer)));
    toTheBench();
    assertThat(next().kind()).as("what was entered stays").isEqualTo(StepKind.SHOP_RETURN);
    touch("bench-next");
    walkTo(StepKind.NEW_SHEET);
    touch("bench-next");
    walkTo(StepKind.CONFIRM);
    touch("bench-next");
    go(new Place.Job(BenchJobs.JOB));
    touch("end-BACK");
    assertThat(editor.present().shelf().bike(Bench.BIKE).orElseThrow().latestSheet())
        .isEqualTo(stiffer);
    assertThat(plan().findings()).isEmpty();
  }

  @Test
  void whatTheShopSetIsEnteredFlaggedAndGoneBackFrom() {
    begin(Bench.notebook(), Scope.SHOCK, Renewed.OIL);
    walkTo(StepKind.SHOP_RETURN);
    write("bench-words", "2.5 wt oil, softer shims");
    touch("bench-next");
    assertThat(job().done(new StepId("shop-return")).orElseThrow().entered())
        .isEqualTo(new Entered.Ticked("2.5 wt oil, softer shims"));
    assertThat(next().kind()).isEqualTo(StepKind.SHOP_GAS);
    write("bench-field", "10 mm");
    assertThat(node("bench-next").isDisabled()).as("a length is no pressure").isTrue();
    write("bench-field", "145 psi");
    touch("bench-next");
    walkTo(StepKind.SHOP_FOUND);
    StepId rebound = StepId.finding(Bench.SHOCK_REBOUND);
    go(new Place.Bench(BenchJobs.JOB, Optional.of(StepId.finding(Bench.SHOCK_SPRING))));
    while (!next().id().equals(rebound)) {
      Amount left = BenchJobs.reading(next()).orElseThrow().leg(Side.LEFT).known().orElseThrow();
      write("bench-field", left.toString());
      touch("bench-next");
    }
    write("bench-field", "40");
    touch("bench-next");
    assertThat(said())
        .as("found is kept and flagged")
        .anyMatch(line -> line.contains("is outside"));
    assertThat(text("bench-next")).isEqualTo("Leave it so, next");
    assertThat(Timeline.of(editor.present(), Bench.BIKE).now().reading(Bench.SHOCK_REBOUND))
        .contains(Reading.of(clicks(40)));
    touch("bench-next");
    Notebook later =
        BenchJobs.walkedTo(
            editor.present(), step -> step.id().equals(StepId.placing(Bench.SHOCK_REBOUND)));
    interact(() -> editor.open(later));
    toTheBench();
    assertThat(said()).anyMatch(line -> line.startsWith("From where the shop left it: 40"));
    write("bench-field", "40");
    assertThat(node("bench-next").isDisabled()).as("set is refused").isTrue();
    write("bench-field", "12");
    touch("bench-next");
    assertThat(Timeline.of(editor.present(), Bench.BIKE).now().reading(Bench.SHOCK_REBOUND))
        .contains(Reading.of(clicks(12)));
  }

  @Test
  void nothingIsLeftOutBeforeWhatMustBeDoneFirst() {
    begin(BenchJobs.of(Jobs.air(), Jobs.airSetup()), Scope.FORK, Renewed.OIL);
    walkTo(StepKind.AIR_RELEASE);
    go(new Place.Bench(BenchJobs.JOB, Optional.of(new StepId("stand"))));
    assertThat(node("bench-cannot").isDisabled()).isTrue();
    toTheBench();
    assertThat(node("bench-cannot").isDisabled()).isFalse();
  }

  @Test
  void legsThatDifferAskForAnotherValueAndNotForTheSameAgain() {
    begin(Bench.notebook(), Scope.FORK, Renewed.OIL);
    walkTo(StepKind.PLACE_FILL);
    Amount left = BenchJobs.reading(next()).orElseThrow().leg(Side.LEFT).known().orElseThrow();
    write("bench-field-LEFT", left.toString());
    write("bench-field-RIGHT", left.plus(ml("3")).toString());
    touch("bench-next");
    assertThat(text("bench-next")).isEqualTo("It does not do: enter another value");
    assertThat(node("bench-next").isDisabled()).isTrue();
    write("bench-field-RIGHT", left.toString());
    assertThat(node("bench-next").isDisabled()).isFalse();
  }

  @Test
  void aCountUnlikeTheNotebookMayBeTrustedToo() {
    begin(Bench.notebook(), Scope.FORK, Renewed.OIL);
    walkTo(StepKind.COUNT);
    Step count = next();
    Reading noted = count.goal().noted().orElseThrow();
    Amount left = noted.leg(Side.LEFT).known().orElseThrow();
    write("bench-field-LEFT", left.toString());
    write("bench-field-RIGHT", left.plus(clicks(2)).toString());
    touch("bench-next");
    assertThat(said()).anyMatch(line -> line.contains("Which is to be trusted?"));
    assertThat(text("bench-trust-notebook")).isEqualTo("Trust the notebook");
    assertThat(text("bench-next")).isEqualTo("Trust the count, next");
    touch("bench-next");
    assertThat(job().done(count.id()).orElseThrow().entered())
        .isEqualTo(new Entered.Counted(Reading.of(left, left.plus(clicks(2)))));
    assertThat(next().id()).isNotEqualTo(count.id());
  }

  @Test
  void everyCautionStandsAtItsStep() {
    begin(Bench.notebook(), Scope.BOTH, Renewed.OIL, Renewed.SEALS, Renewed.SPRING);
    PlanWords words = new PlanWords(Phrases.english(Display.METRIC));
    Set<Caution> seen = EnumSet.noneOf(Caution.class);
    for (Step step : plan().steps()) {
      if (!seen.containsAll(step.cautions())) {
        go(new Place.Bench(BenchJobs.JOB, Optional.of(step.id())));
        assertThat(said()).containsAll(step.cautions().stream().map(words::caution).toList());
        seen.addAll(step.cautions());
      }
    }
    assertThat(seen)
        .contains(
            Caution.RELEASE_AIR_FIRST,
            Caution.NEVER_OPEN_GAS,
            Caution.UNDER_LOAD,
            Caution.NEVER_FORCE,
            Caution.STABLE_STAND,
            Caution.MANUAL_RULES,
            Caution.BRAKE_AND_WHEEL,
            Caution.FIRST_RIDE_SLOW,
            Caution.ENDS_THE_RIDE,
            Caution.LICENSED_FIRST,
            Caution.ONE_THING);
  }

  @Test
  void afterNotBackTheCausesStandInOrderEachWithItsCheck() {
    interact(() -> editor.open(BenchJobs.confirmed(4, 2)));
    toTheBench();
    List<String> said = new ArrayList<>();
    node("verdict").lookupAll(".label").forEach(each -> said.add(((Label) each).getText()));
    assertThat(said.get(0)).startsWith("The ratings say: not back.");
    assertThat(said)
        .containsSubsequence(
            "1. Air in the cartridge: Push each leg down by hand: both come back alike?",
            "2. The legs differ: Count both legs in to closed and out again.",
            "3. A fill is off: Measure both fills again.",
            "4. Counted from the wrong end: Count in to closed again, and out to the baseline.",
            "5. The axle is pinched: Loosen the floating side's pinch bolts, pump the fork, tighten"
                + " them again.",
            "6. Sag is off: Measure race and free sag.",
            "7. Tyre pressure is off: Check both tyre pressures cold.",
            "Only when every cause is ruled out: trim one click at a time, 2 at most.");
  }

  /**
   * What holds for every plan, through the page: whatever is typed and touched, nothing beyond the
   * sheet is chosen, no step is passed before those it rests on, and undo goes all the way back.
   */
  @Test
  void whateverIsTouchedTheBoundsOfThePlanHold() {
    touchWhateverComes(1, 12);
  }

  @org.junit.jupiter.api.Tag("long")
  @Test
  void whateverIsTouchedTheBoundsOfThePlanHoldAtLength() {
    touchWhateverComes(3, 60);
  }

  private void touchWhateverComes(int seeds, int touches) {
    for (long seed = 1; seed <= seeds; seed++) {
      Random random = new Random(seed);
      begin(Bench.notebook(), Scope.FORK, Renewed.OIL);
      Notebook start = editor.present();
      for (int i = 0; i < touches; i++) {
        Optional<Step> step = plan().next();
        if (step.isEmpty()) {
          break;
        }
        any(step.get(), random);
        JobBounds.hold(plan(), job());
      }
      for (int i = 0; i < 200 && !editor.present().equals(start); i++) {
        interact(editor::undo);
      }
      assertThat(editor.present()).isEqualTo(start);
    }
  }

  /** Types what comes, and touches next where it can be touched; sometimes as it should be. */
  private void any(Step step, Random random) {
    toTheBench();
    boolean wild = random.nextInt(3) == 0;
    if (step.ask().form() != Ask.Form.TICK) {
      Reading wanted = BenchJobs.reading(step).orElseThrow();
      for (Side side : Side.values()) {
        String field =
            step.ask().bothLegs()
                ? "bench-field-" + side
                : "bench-field" + step.leg().map(leg -> "-" + leg).orElse("");
        Amount right = wanted.leg(side).known().orElseThrow();
        String text = wild ? right.plus(right).toString() : right.toString();
        interact(() -> ((TextField) node(field)).setText(text));
      }
    }
    settle();
    ButtonBase main = (ButtonBase) node("bench-next");
    if (!main.isDisabled()) {
      interact(main::fire);
    } else {
      touch("bench-cannot");
      touch("skip-tool");
    }
    settle();
  }
}
