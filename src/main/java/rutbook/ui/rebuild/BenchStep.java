package rutbook.ui.rebuild;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import rutbook.drawing.Ruler;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Tightening;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Caution;
import rutbook.rebuild.Finding;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Remark;
import rutbook.rebuild.Step;
import rutbook.rebuild.Target;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.RulerView;
import rutbook.units.Display;
import rutbook.units.Numerals;
import rutbook.words.BenchWords;
import rutbook.words.FindingWords;
import rutbook.words.PlanWords;
import rutbook.words.RemarkWords;

/** One step to be read from two metres: what, how much, between what, why, and with what care. */
final class BenchStep extends VBox {
  private final BenchWords words;
  private final FindingWords findings;
  private final PlanWords planWords;
  private final Display display;
  private final Numerals numerals;

  BenchStep(Desk desk, Plan plan, Step step) {
    super(12);
    this.words = new BenchWords(desk.phrases());
    this.findings = new FindingWords(desk.phrases());
    this.planWords = new PlanWords(desk.phrases());
    this.display = desk.phrases().display();
    this.numerals = desk.phrases().amounts().numerals();
    setId("bench-step");
    String about = planWords.about(step);
    if (!about.isEmpty()) {
      Label of = Keys.prose(desk.phrases().sentence(about), "bench-line", "strong");
      of.setId("bench-about");
      getChildren().add(of);
    }
    Label title = Keys.prose(planWords.what(step), "bench-title");
    title.setId("bench-title");
    getChildren().add(title);
    headline(step);
    words
        .thenOut(step)
        .ifPresent(line -> getChildren().add(Keys.prose(line, "bench-line", "strong")));
    torques(step);
    cautions(step);
    ruler(plan, step);
    lines(desk, plan, step);
    findings(desk, plan, step);
  }

  private void headline(Step step) {
    words
        .headline(step)
        .ifPresent(
            said -> {
              Label value = Keys.label(said, "bench-value");
              value.setId("bench-value");
              value.setMinWidth(USE_PREF_SIZE);
              HBox row = new HBox(18, value);
              row.setAlignment(Pos.BASELINE_LEFT);
              words
                  .otherSystem(step)
                  .ifPresent(other -> row.getChildren().add(Keys.label(other, "bench-other")));
              getChildren().add(row);
            });
  }

  /** One fastener has its torque in the headline; of several each has its own, in both systems. */
  private void torques(Step step) {
    if (step.goal().torques().isEmpty()) {
      return;
    }
    boolean one = step.goal().torques().size() == 1;
    for (Tightening each : step.goal().torques()) {
      String said = one ? each.name() : planWords.torque(each);
      getChildren().add(Keys.prose(said, "bench-line"));
    }
  }

  private void ruler(Plan plan, Step step) {
    Optional<Target> target = step.target().filter(each -> each.limits().isPresent());
    if (target.isEmpty() || step.setting().isEmpty()) {
      return;
    }
    Setting setting = step.setting().get();
    Reading stands =
        plan.done(step.id())
            .flatMap(done -> Ask.reading(done.entered()))
            .filter(reading -> !reading.amounts().isEmpty())
            .orElse(target.get().reading());
    RulerView ruler = new RulerView(numerals, 1.5);
    ruler.show(
        Ruler.of(plan.sheet(), setting, stands).withBaseline(target.get().reading()).in(display));
    getChildren().add(ruler);
  }

  private void lines(Desk desk, Plan plan, Step step) {
    planWords
        .oil(step)
        .ifPresent(
            said -> {
              Label oil = Keys.prose(said, "bench-line", "strong");
              oil.setId("bench-oil");
              getChildren().add(oil);
            });
    planWords
        .fromTheShop(plan, step)
        .ifPresent(line -> getChildren().add(Keys.prose(line, "bench-line", "strong")));
    String aside = String.join(" ", planWords.aside(step));
    if (!aside.isEmpty()) {
      getChildren().add(Keys.prose(aside, "bench-line"));
    }
    if (!FillPanel.serves(plan, step)) {
      words.equality(step).ifPresent(line -> getChildren().add(Keys.prose(line, "bench-line")));
    }
    RemarkWords remarks = new RemarkWords(desk.phrases());
    for (Remark remark : step.goal().remarks()) {
      getChildren().add(Keys.prose(remarks.remark(plan.sheet(), remark), "bench-line"));
    }
    getChildren().add(Keys.prose(words.why(step), "bench-line", "soft"));
  }

  private void cautions(Step step) {
    if (step.cautions().isEmpty()) {
      return;
    }
    VBox box = new VBox(4);
    box.getStyleClass().addAll("caution", "bench-caution");
    for (Caution caution : step.cautions()) {
      box.getChildren().add(Keys.prose(planWords.caution(caution), "bench-line"));
    }
    getChildren().add(box);
  }

  private void findings(Desk desk, Plan plan, Step step) {
    List<Finding> found = plan.findings(step.id());
    if (found.isEmpty()) {
      return;
    }
    VBox box = new VBox(4);
    box.setId("bench-findings");
    for (Finding each : found) {
      box.getChildren().add(Keys.prose(findings.finding(each), "bench-line", "error"));
    }
    getChildren().add(2 > getChildren().size() ? getChildren().size() : 1, box);
  }
}
