package rutbook.ui.next;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.drawing.EffectLine;
import rutbook.drawing.Ruler;
import rutbook.notebook.Entry;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Reading;
import rutbook.notebook.Timeline;
import rutbook.reasoning.Bother;
import rutbook.reasoning.Suggestion;
import rutbook.reasoning.Trial;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.RulerView;
import rutbook.ui.fx.DrawingView;
import rutbook.words.ReasoningWords;

/** One proposal: where the setting goes, how sure, why, what it may cost; taken or not now. */
final class SuggestionCard extends VBox {
  /** The rule and the own motos behind the greatest help are said at once, the rest on asking. */
  private static final int SPOKEN = 2;

  private static final double EFFECT_WIDTH = 150;
  private static final double EFFECT_HEIGHT = 18;

  private final Desk desk;
  private final Suggestion suggestion;
  private final ReasoningWords words;
  private final VBox below = new VBox(6);
  private final Label error = Keys.prose("", "error");
  private final ToggleButton evidence;
  private final List<String> why;
  private final List<Bother> now;

  /**
   * @param now what bothers with the setup as it is
   */
  SuggestionCard(Desk desk, Suggestion suggestion, List<Bother> now, int place, boolean first) {
    super(8);
    this.desk = desk;
    this.suggestion = suggestion;
    this.now = now;
    this.words = new ReasoningWords(desk.phrases());
    setId("suggestion-" + place);
    getStyleClass().add("card");
    if (first) {
      getStyleClass().add("chosen");
    }
    RulerView ruler = new RulerView(desk.settingWords().numerals(), 1.25);
    ruler.show(ruler());
    ruler.setMinHeight(USE_PREF_SIZE);
    String title = words.suggestion(suggestion);
    getChildren()
        .addAll(
            Keys.prose(title, "card-title"),
            Keys.prose(sentence(words.chance(suggestion)), "blue", "strong"),
            ruler);
    List<String> reasons = words.reasons(suggestion);
    int shifts = 1 + suggestion.shifts().size();
    int effort = reasons.size() - (suggestion.room().isPresent() ? 2 : 1);
    why = reasons.subList(shifts, effort);
    getChildren().add(Keys.prose(sentence(reasons.get(0)), "strong"));
    getChildren().add(effects(reasons.subList(1, shifts)));
    words.tells(suggestion).ifPresent(said -> getChildren().add(Keys.prose(said, "blue")));
    add(reasons.subList(effort, reasons.size()), "soft");
    error.managedProperty().bind(error.textProperty().isNotEmpty());
    error.setId("suggestion-error-" + place);
    evidence = Keys.choice("evidence-" + place, desk.text("next.evidence"), this::evidence);
    FlowPane keys =
        new FlowPane(
            8,
            8,
            first
                ? Keys.mainKey("take-" + place, desk.text("next.take"), this::take)
                : Keys.key("take-" + place, desk.text("next.take"), this::take),
            Keys.key("not-now-" + place, desk.text("next.not.now"), this::notNow),
            evidence);
    getChildren().addAll(keys, error);
    add(why.subList(0, Math.min(SPOKEN, why.size())), "soft");
    getChildren().add(below);
  }

  private void add(List<String> said, String style) {
    said.forEach(each -> getChildren().add(Keys.prose(sentence(each), style)));
  }

  /** Each complaint with a line from 0 to 5: where it is, and where it is expected. */
  private GridPane effects(List<String> said) {
    GridPane rows = new GridPane();
    rows.setHgap(14);
    rows.setVgap(4);
    for (int i = 0; i < said.size(); i++) {
      Suggestion.Shift shift = suggestion.shifts().get(i);
      DrawingView line = new DrawingView();
      line.show(
          EffectLine.of(
              now(shift), shift.mean(), shift.low(), shift.high(), EFFECT_WIDTH, EFFECT_HEIGHT));
      line.setMinSize(EFFECT_WIDTH, EFFECT_HEIGHT);
      Label text = Keys.prose(sentence(said.get(i)));
      GridPane.setHgrow(text, Priority.SOMETIMES);
      rows.addRow(i, line, text);
    }
    return rows;
  }

  /** What is not among the complaints of now is not there. */
  private double now(Suggestion.Shift shift) {
    return now.stream()
        .filter(bother -> bother.complaint().equals(shift.complaint()))
        .mapToDouble(bother -> Math.max(0, bother.expected()))
        .findFirst()
        .orElse(0);
  }

  private String sentence(String text) {
    return desk.phrases().sentence(text);
  }

  private Ruler ruler() {
    Timeline timeline = Timeline.of(desk.notebook(), desk.bike().orElseThrow().id());
    Ruler ruler =
        Ruler.of(timeline.bike().latestSheet(), suggestion.setting(), suggestion.from())
            .withProposal(suggestion.to())
            .in(desk.notebook().display());
    Optional<Reading> baseline =
        timeline
            .baseline()
            .map(Entry.Baseline::setup)
            .flatMap(setup -> setup.reading(suggestion.setting().id()));
    return baseline.map(ruler::withBaseline).orElse(ruler);
  }

  /** Rules, the motos that speak of it, each a way to its session, and the curve it moves. */
  private void evidence() {
    below.getChildren().clear();
    if (!evidence.isSelected()) {
      return;
    }
    why.stream()
        .skip(SPOKEN)
        .forEach(each -> below.getChildren().add(Keys.prose(sentence(each), "soft")));
    for (Suggestion.Shift shift : suggestion.shifts()) {
      below.getChildren().add(Keys.prose(words.shift(shift), "strong"));
      if (shift.trials().isEmpty()) {
        below.getChildren().add(Keys.prose(desk.text("next.no.motos"), "soft"));
      }
      for (Trial trial : shift.trials()) {
        below
            .getChildren()
            .add(
                new HBox(
                    10,
                    Keys.key(
                        "trial-" + trial.after(),
                        desk.words().day(trial.day()),
                        () -> desk.go(new Place.Session(trial.session()))),
                    said(trial)));
      }
    }
    new MovedCurve(desk, suggestion).node().ifPresent(below.getChildren()::add);
  }

  private Label said(Trial trial) {
    Label said =
        Keys.prose(
            desk.text(
                trial.clean() ? "next.trial.clean" : "next.trial.mixed",
                trial.severityBefore(),
                trial.severityAfter()));
    said.setMinHeight(44);
    said.setAlignment(Pos.CENTER_LEFT);
    return said;
  }

  private void take() {
    Optional<NotebookException> refused = new TakenSuggestion(desk, suggestion).take();
    refused.ifPresent(fault -> error.setText(desk.settingWords().refusal(fault)));
  }

  private void notNow() {
    FlowPane usual = new FlowPane(8, 8);
    for (String each : List.of("time", "tried", "part", "feel")) {
      String reason = desk.text("next.why." + each);
      usual.getChildren().add(Keys.key("why-" + each, reason, () -> decline(reason)));
    }
    TextField own = new TextField();
    own.setId("why-own");
    own.getStyleClass().add("large-target");
    own.setPromptText(desk.text("skip.own"));
    own.setAccessibleText(desk.text("skip.own"));
    own.setOnAction(event -> decline(own.getText()));
    below.getChildren().setAll(Keys.label(desk.text("next.why"), "strong"), usual, own);
  }

  private void decline(String reason) {
    if (!reason.isBlank()) {
      new TakenSuggestion(desk, suggestion)
          .decline(reason)
          .ifPresent(fault -> error.setText(desk.settingWords().refusal(fault)));
    }
  }
}
