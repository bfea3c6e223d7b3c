package rutbook.ui.rebuild;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import rutbook.edit.Edit;
import rutbook.edit.RebuildEdit;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Outcome;
import rutbook.rebuild.Plan;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.words.BenchWords;

/** How a rebuild ends: what the ratings say, what the rider says, and whether to keep it. */
final class EndJob extends VBox {
  private final Desk desk;
  private final Entry.RebuildJob job;
  private final CheckBox keep = new CheckBox();
  private final TextField reason = new TextField();
  private final Label error = Keys.prose("", "error");

  EndJob(Desk desk, Entry.RebuildJob job, Plan plan) {
    super(10);
    this.desk = desk;
    this.job = job;
    setId("end-job");
    getStyleClass().add("card");
    BenchWords words = new BenchWords(desk.phrases());
    getChildren().add(Keys.label(desk.text("job.end"), "card-title"));
    Jobs.confirmed(desk.notebook(), job, plan)
        .ifPresent(confirm -> getChildren().add(BenchAside.verdict(desk, confirm)));
    long open = plan.steps().stream().filter(step -> plan.done(step.id()).isEmpty()).count();
    if (open > 0) {
      getChildren().add(Keys.prose(desk.text("job.open.steps", open), "soft"));
    }
    keep.setText(desk.text("baseline.keep.after"));
    keep.setId("job-keep");
    keep.setWrapText(true);
    reason.setId("job-reason");
    reason.getStyleClass().add("large-target");
    reason.setPromptText(desk.text("baseline.reason"));
    reason.setAccessibleText(desk.text("baseline.reason"));
    reason.visibleProperty().bind(keep.selectedProperty());
    reason.managedProperty().bind(keep.selectedProperty());
    error.setId("end-error");
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    FlowPane keys = new FlowPane(8, 8);
    for (Outcome each : List.of(Outcome.BACK, Outcome.NOT_BACK, Outcome.GIVEN_UP)) {
      keys.getChildren()
          .add(
              Keys.key(
                  "end-" + each, desk.phrases().sentence(words.outcome(each)), () -> end(each)));
    }
    if (job.job().shock()) {
      boolean away = job.outcome() == Outcome.AT_THE_SHOP;
      Outcome other = away ? Outcome.UNDER_WAY : Outcome.AT_THE_SHOP;
      keys.getChildren()
          .add(
              Keys.key(
                  "end-" + other,
                  away ? desk.text("job.from.shop") : desk.phrases().sentence(words.outcome(other)),
                  () -> desk.make(new RebuildEdit.End(job.id(), other))));
    }
    getChildren().addAll(keep, reason, error, keys);
  }

  private void end(Outcome outcome) {
    Edit end = new RebuildEdit.End(job.id(), outcome);
    boolean kept = keep.isSelected() && outcome == Outcome.BACK;
    if (keep.isSelected() && reason.getText().isBlank() && outcome == Outcome.BACK) {
      error.setText(desk.text("baseline.no.reason"));
      reason.requestFocus();
      return;
    }
    Optional<NotebookException> refused =
        desk.make(kept ? new Edit.Together(List.of(end, baseline())) : end);
    refused.ifPresent(fault -> error.setText(desk.settingWords().refusal(fault)));
  }

  /** What is on the bike now; the old baseline stays in the notebook. */
  private Edit baseline() {
    Bike bike = desk.notebook().shelf().bike(job.bike()).orElseThrow();
    return KeepBaseline.edit(desk, bike, reason.getText(), Optional.of(job.id()));
  }
}
