package rutbook.ui.rebuild;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import rutbook.edit.EntryEdit;
import rutbook.notebook.Bike;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Timeline;
import rutbook.reasoning.Ledger;
import rutbook.rebuild.EvidenceOrder;
import rutbook.rebuild.ReturnItem;
import rutbook.rebuild.ReturnOrder;
import rutbook.rebuild.ReturnToBaseline;
import rutbook.rebuild.Shortfall;
import rutbook.rebuild.Stage;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.words.BenchWords;
import rutbook.words.PlanWords;

/** The way back to the baseline for a bike that has drifted: all at once, or one a moto. */
final class WayBack extends VBox {
  private final Desk desk;
  private final Bike bike;
  private final BenchWords words;
  private final PlanWords planWords;
  private final VBox stages = new VBox(8);
  private final ToggleButton atOnce;
  private final ToggleButton oneByOne;
  private final Optional<ReturnToBaseline> back;
  private boolean all = true;

  WayBack(Desk desk, Bike bike) {
    super(10);
    this.desk = desk;
    this.bike = bike;
    this.words = new BenchWords(desk.phrases());
    this.planWords = new PlanWords(desk.phrases());
    setId("way-back");
    getStyleClass().add("card");
    Timeline timeline = Timeline.of(desk.notebook(), bike.id());
    back =
        timeline
            .baseline()
            .map(
                baseline ->
                    ReturnToBaseline.of(
                        bike.latestSheet(),
                        baseline.setup(),
                        timeline.now(),
                        desk.advisor(bike.id())));
    atOnce = Keys.choice("back-all", desk.text("back.all"), () -> choose(true));
    oneByOne = Keys.choice("back-one", desk.text("back.one"), () -> choose(false));
    getChildren().add(Keys.label(desk.text("back.title"), "card-title"));
    timeline
        .baseline()
        .ifPresent(
            baseline ->
                getChildren()
                    .add(
                        Keys.prose(
                            desk.text("back.of", desk.words().day(baseline.day()))
                                + (baseline.reason().isBlank()
                                    ? ""
                                    : " · " + desk.phrases().safe(baseline.reason())),
                            "soft")));
    if (back.isEmpty()) {
      getChildren().add(Keys.prose(words.say("back.no-baseline")));
      getChildren()
          .add(Keys.key("baseline-keep", desk.text("baseline.keep"), this::keepAsBaseline));
    } else if (back.get().items().isEmpty()) {
      getChildren().add(Keys.prose(words.say("back.nothing")));
    } else {
      getChildren().addAll(new HBox(8, atOnce, oneByOne), stages);
      choose(true);
    }
    back.filter(each -> !each.noTarget().isEmpty())
        .ifPresent(
            each ->
                getChildren()
                    .add(
                        Keys.prose(
                            words.say(
                                "back.no-target",
                                each.noTarget().stream()
                                    .map(words::setting)
                                    .collect(Collectors.joining(", "))),
                            "soft")));
  }

  private void choose(boolean atOnceChosen) {
    all = atOnceChosen;
    atOnce.setSelected(all);
    oneByOne.setSelected(!all);
    ReturnToBaseline way = back.orElseThrow();
    List<Stage> shown = all ? way.allAtOnce() : way.oneAtATime(byEvidence());
    stages.getChildren().clear();
    stages
        .getChildren()
        .add(Keys.prose(words.say(all ? "back.at-once" : "back.one-by-one"), "soft"));
    for (int i = 0; i < shown.size(); i++) {
      stages.getChildren().add(stage(shown.get(i), i + 1, shown.size() > 1));
    }
    for (Shortfall shortfall : way.shortfalls()) {
      stages.getChildren().add(Keys.prose(planWords.shortfall(shortfall), "due"));
    }
  }

  /** What is felt most goes back first, by the rules and the rider's own motos. */
  private ReturnOrder byEvidence() {
    return new EvidenceOrder(Ledger.of(desk.notebook(), bike.id(), desk.rules()));
  }

  /** Only the first stage can be done now: what follows rests on how it rode. */
  private Node stage(Stage stage, int number, boolean many) {
    VBox box = new VBox(4);
    if (many) {
      box.getChildren().add(Keys.label(words.say("back.stage", number), "group-title"));
    }
    for (ReturnItem item : stage.items()) {
      box.getChildren().add(Keys.prose(planWords.back(item)));
    }
    if (number == 1) {
      box.getChildren().add(Keys.mainKey("back-done", desk.text("back.done"), () -> done(stage)));
    }
    return box;
  }

  /** Written down as changed today, between sessions. */
  private void done(Stage stage) {
    List<Change> changes =
        stage.items().stream()
            .filter(
                item ->
                    item.action() != ReturnItem.Action.RE_REFERENCE
                        || stage.items().stream()
                            .noneMatch(
                                other ->
                                    other.action() != ReturnItem.Action.RE_REFERENCE
                                        && other.what().equals(item.what())))
            .map(item -> Change.of(item.what().setting().id(), item.what().target().reading()))
            .toList();
    desk.make(new EntryEdit.Add(new Entry.Adjusted(desk.headToday(bike), changes)))
        .ifPresent(this::refuse);
  }

  private void keepAsBaseline() {
    desk.make(KeepBaseline.first(desk, bike)).ifPresent(this::refuse);
  }

  private void refuse(NotebookException fault) {
    getChildren().add(Keys.prose(desk.settingWords().refusal(fault), "error"));
  }
}
