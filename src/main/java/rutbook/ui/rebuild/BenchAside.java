package rutbook.ui.rebuild;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import rutbook.notebook.EntryId;
import rutbook.rebuild.ConfirmMoto;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.rebuild.Suspect;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.words.PlanWords;

/** What stands beside a step: what comes next, the tools, and, at the end, the verdict. */
final class BenchAside {
  private static final int NEXT = 3;

  private BenchAside() {}

  static List<Node> of(Desk desk, EntryId id, Plan plan, Step step) {
    List<Node> aside = new ArrayList<>();
    if (step.kind() == StepKind.CONFIRM) {
      Jobs.job(desk.notebook(), id)
          .flatMap(job -> Jobs.confirmed(desk.notebook(), job, plan))
          .map(confirm -> verdict(desk, confirm))
          .ifPresent(
              said -> {
                said.getChildren().forEach(line -> line.getStyleClass().add("bench-line"));
                aside.add(said);
              });
    }
    if (step.kind() == StepKind.SHOP_SHEET) {
      Jobs.job(desk.notebook(), id)
          .ifPresent(job -> aside.add(new OnPaper(desk, job, plan).shop()));
    }
    if (step.kind() == StepKind.NEW_SHEET || step.kind() == StepKind.SHOP_RETURN) {
      aside.add(
          Keys.key(
              "bench-sheet",
              desk.text("bench.sheet"),
              () -> desk.go(new Place.Bike(Place.BikePart.SETTINGS))));
    }
    after(desk, plan, step).ifPresent(aside::add);
    return aside;
  }

  /** What the ratings say, and the causes in order. */
  static VBox verdict(Desk desk, ConfirmMoto confirm) {
    rutbook.words.FindingWords words = new rutbook.words.FindingWords(desk.phrases());
    VBox box = new VBox(6, Keys.prose(words.verdict(confirm.verdict()), "card-title"));
    box.setId("verdict");
    confirm.symptoms().forEach(rise -> box.getChildren().add(Keys.prose(words.rise(rise))));
    int place = 1;
    for (Suspect suspect : confirm.suspects()) {
      box.getChildren().add(Keys.prose(words.suspect(place++, suspect)));
      suspect
          .because()
          .forEach(each -> box.getChildren().add(Keys.prose(words.finding(each), "due")));
    }
    if (!confirm.suspects().isEmpty()) {
      box.getChildren().add(Keys.prose(words.trim(), "soft"));
    }
    return box;
  }

  private static Optional<Node> after(Desk desk, Plan plan, Step step) {
    int place = plan.steps().indexOf(step);
    List<Step> next =
        plan.steps()
            .subList(
                Math.min(place + 1, plan.steps().size()),
                Math.min(place + 1 + NEXT, plan.steps().size()));
    if (next.isEmpty()) {
      return Optional.empty();
    }
    PlanWords words = new PlanWords(desk.phrases());
    VBox box = new VBox(4, Keys.label(desk.text("bench.coming"), "bench-line", "soft"));
    next.forEach(each -> box.getChildren().add(Keys.prose(words.title(each), "bench-next")));
    return Optional.of(box);
  }
}
