package rutbook.ui.rebuild;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.javafx.FontIcon;
import org.kordamp.ikonli.materialdesign2.MaterialDesignA;
import org.kordamp.ikonli.materialdesign2.MaterialDesignC;
import org.kordamp.ikonli.materialdesign2.MaterialDesignE;
import org.kordamp.ikonli.materialdesign2.MaterialDesignM;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.rebuild.Plan;
import rutbook.rebuild.ReturnItem;
import rutbook.rebuild.Stage;
import rutbook.rebuild.Step;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.words.FindingWords;
import rutbook.words.PlanWords;
import rutbook.words.RemarkWords;

/** The plan of one rebuild: every step in its order, what it found, and how it ends. */
public final class JobPage extends OneJob {
  private final Label title = Keys.label("", "page-title");
  private final Label where = Keys.prose("", "soft");
  private final Button toBench;
  private final VBox steps = new VBox(2);
  private final VBox beside = new VBox(14);

  public JobPage(Desk desk, EntryId id) {
    super(desk, id);
    setId("job-page");
    setSpacing(12);
    toBench =
        Keys.mainKey(
            "job-bench",
            desk.text("rebuild.bench"),
            () -> desk.go(new rutbook.ui.Place.Bench(id(), Optional.empty())));
    VBox text = new VBox(2, title, where);
    text.setMinWidth(0);
    HBox.setHgrow(text, Priority.ALWAYS);
    HBox head =
        new HBox(
            10,
            Keys.key(
                "job-back",
                "← " + desk.text("job.back"),
                () -> desk.go(new rutbook.ui.Place.Rebuild())),
            text,
            toBench);
    head.setAlignment(Pos.CENTER_LEFT);
    HBox columns = new HBox(16, column(steps), column(beside));
    VBox.setVgrow(columns, Priority.ALWAYS);
    columns.setMinHeight(0);
    getChildren().addAll(head, columns);
  }

  private static ScrollPane column(VBox content) {
    ScrollPane scroll = Scrolling.of(content);
    scroll.setPrefWidth(100);
    HBox.setHgrow(scroll, Priority.ALWAYS);
    return scroll;
  }

  @Override
  void show(Entry.RebuildJob job, Plan plan) {
    title.setText(bench().job(plan.job()) + ", " + desk().words().day(job.day()));
    where.setText(
        plan.next()
            .filter(step -> Jobs.isOpen(job))
            .map(step -> bench().progress(plan, step))
            .orElseGet(() -> bench().outcome(job.outcome())));
    toBench.setVisible(Jobs.isOpen(job));
    toBench.setManaged(Jobs.isOpen(job));
    list(steps, plan, step -> step(plan, step));
    beside(job, plan);
  }

  private Node step(Plan plan, Step step) {
    Plan.State state = plan.state(step);
    int number = plan.steps().indexOf(step) + 1;
    Label sign = Keys.label("", "step-mark");
    icon(state).ifPresent(icon -> sign.setGraphic(new FontIcon(icon)));
    sign.setMinWidth(26);
    Label name = Keys.prose(number + ". " + new PlanWords(desk().phrases()).title(step));
    if (state == Plan.State.WAITING || state == Plan.State.DONE) {
      name.getStyleClass().add("soft");
    }
    VBox text = new VBox(1, name);
    plan.done(step.id())
        .ifPresent(
            done ->
                text.getChildren()
                    .add(
                        Keys.prose(
                            bench().entered(step, done, desk().zone()), "condensed", "soft")));
    text.setMinWidth(0);
    HBox.setHgrow(text, Priority.ALWAYS);
    StepRow row =
        new StepRow(
            sign, text, () -> desk().go(new rutbook.ui.Place.Bench(id(), Optional.of(step.id()))));
    row.setId("step-" + step.id().text().replace(':', '-'));
    if (plan.next().equals(Optional.of(step)) && toBench.isVisible()) {
      row.getStyleClass().add("present");
    }
    row.setAccessibleText(name.getText() + ", " + bench().state(state));
    return row;
  }

  private static Optional<Ikon> icon(Plan.State state) {
    return switch (state) {
      case DONE -> Optional.of(MaterialDesignC.CHECK);
      case SKIPPED -> Optional.of(MaterialDesignM.MINUS);
      case AGAIN -> Optional.of(MaterialDesignE.EXCLAMATION);
      case READY -> Optional.of(MaterialDesignA.ARROW_RIGHT);
      case WAITING -> Optional.empty();
    };
  }

  private void beside(Entry.RebuildJob job, Plan plan) {
    beside.getChildren().clear();
    PlanWords planWords = new PlanWords(desk().phrases());
    FindingWords findings = new FindingWords(desk().phrases());
    if (Jobs.isOpen(job) && !plan.tools().isEmpty()) {
      beside
          .getChildren()
          .add(box(desk().text("job.tools"), Keys.prose(phrase(bench().tools(plan.tools())))));
    }
    if (Jobs.isOpen(job)) {
      planWords
          .oil(plan)
          .ifPresent(oil -> beside.getChildren().add(box(desk().text("job.oil"), oil(oil))));
    }
    if (!plan.findings().isEmpty()) {
      VBox found = new VBox(4);
      plan.findings()
          .forEach(each -> found.getChildren().add(Keys.prose(findings.finding(each), "due")));
      beside.getChildren().add(box(desk().text("job.findings"), found));
    }
    if (Jobs.isOpen(job)) {
      beside.getChildren().add(box(desk().text("paper.title"), paper(job, plan)));
    }
    VBox way = new VBox(4);
    way.setId("job-way");
    for (Stage stage : plan.back().allAtOnce()) {
      for (ReturnItem item : stage.items()) {
        way.getChildren().add(Keys.prose(planWords.back(item)));
      }
    }
    plan.shortfalls()
        .forEach(each -> way.getChildren().add(Keys.prose(planWords.shortfall(each), "due")));
    if (way.getChildren().isEmpty()) {
      way.getChildren().add(Keys.prose(bench().say("back.nothing")));
    }
    beside.getChildren().add(box(desk().text("job.way"), way));
    RemarkWords remarks = new RemarkWords(desk().phrases());
    if (!plan.remarks().isEmpty()) {
      VBox said = new VBox(4);
      plan.remarks()
          .forEach(each -> said.getChildren().add(Keys.prose(remarks.remark(plan.sheet(), each))));
      beside.getChildren().add(box(desk().text("job.remarks"), said));
    }
    if (Jobs.isOpen(job)) {
      beside.getChildren().add(new EndJob(desk(), job, plan));
    } else {
      Jobs.confirmed(desk().notebook(), job, plan)
          .ifPresent(confirm -> beside.getChildren().add(BenchAside.verdict(desk(), confirm)));
    }
  }

  private Node paper(Entry.RebuildJob job, Plan plan) {
    OnPaper sheets = new OnPaper(desk(), job, plan).work();
    if (job.job().shock()) {
      sheets.shop();
    }
    return new VBox(
        8,
        sheets,
        Keys.key(
            "paper-enter",
            desk().text("paper.enter"),
            () -> desk().go(new rutbook.ui.Place.Paper(id()))));
  }

  private static Label oil(String said) {
    Label oil = Keys.prose(said);
    oil.setId("job-oil-needed");
    return oil;
  }

  private String phrase(String text) {
    return desk().phrases().sentence(text);
  }

  private static VBox box(String heading, Node content) {
    VBox box = new VBox(6, Keys.label(heading, "card-title"), content);
    box.getStyleClass().add("card");
    return box;
  }
}
