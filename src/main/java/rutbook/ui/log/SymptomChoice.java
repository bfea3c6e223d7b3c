package rutbook.ui.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import rutbook.notebook.Bite;
import rutbook.notebook.End;
import rutbook.notebook.Feel;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.notebook.When;
import rutbook.ui.Desk;
import rutbook.ui.controls.KeyRow;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.OneStop;
import rutbook.ui.fx.InView;

/** What the bike did in one section, at which end, how badly, and where it decides. */
final class SymptomChoice extends VBox {
  private static final int WORST = 5;

  private final Desk desk;
  private final Consumer<Feel> noted;
  private final Button elsewhere;
  private final Map<End, ToggleButton> endKeys = new EnumMap<>(End.class);
  private final Map<Symptom, ToggleButton> symptomKeys = new EnumMap<>(Symptom.class);
  private final FlowPane symptoms = new FlowPane(6, 6);
  private final KeyRow severity = new KeyRow("feel-severity", 5);
  private final FlowPane severities;
  private final FlowPane details = new FlowPane(6, 6);
  private FeelModel model;
  private Optional<Section> section = Optional.empty();
  private End end = End.FRONT;
  private Optional<Symptom> symptom = Optional.empty();

  /**
   * @param noted gets a feel with its severity, whether new or said again
   * @param back goes back to the lap, where that gave up its place
   */
  SymptomChoice(Desk desk, Consumer<Feel> noted, Runnable back) {
    super(5);
    this.desk = desk;
    this.noted = noted;
    setId("feel-what");
    elsewhere = Keys.smallKey("feel-elsewhere", "", back);
    details.setId("feel-bite");
    OneStop.of(symptoms);
    OneStop.of(details);
    for (int i = 0; i <= WORST; i++) {
      int bad = i;
      ToggleButton key = Keys.choice("severity-" + i, Integer.toString(i), () -> note(bad));
      key.getStyleClass().add("digit");
      key.setAccessibleText(desk.text("feel.severity", i));
      severity.add(key, Integer.toString(i));
    }
    Label zero = Keys.label(desk.text("feel.zero"), "soft", "condensed");
    severities = new FlowPane(10, 2, severity, zero);
    getChildren().addAll(where(), symptoms, severities, details);
    addEventHandler(KeyEvent.KEY_TYPED, this::typed);
  }

  private Node where() {
    KeyRow ends = new KeyRow("feel-ends", 6);
    for (End each : End.values()) {
      ToggleButton key = Keys.choice("end-" + each, desk.words().label(each), () -> turnTo(each));
      key.getStyleClass().add("small");
      endKeys.put(each, key);
      ends.add(key, "");
    }
    return new FlowPane(6, 6, elsewhere, ends);
  }

  /** Shows the section; the way back stands where the lap is not in sight. */
  void show(FeelModel newModel, Optional<Section> newSection, boolean wayBack) {
    if (!newSection.equals(section)
        || model != null && !model.moto().id().equals(newModel.moto().id())) {
      symptom = Optional.empty();
    }
    model = newModel;
    section = newSection;
    elsewhere.setVisible(wayBack);
    elsewhere.setManaged(wayBack);
    elsewhere.setText("← " + section.map(desk.words()::label).orElse(""));
    elsewhere.setAccessibleText(desk.text("feel.elsewhere", elsewhere.getText()));
    redraw();
  }

  void focus() {
    symptoms.getChildren().stream().findFirst().ifPresent(Node::requestFocus);
  }

  private void turnTo(End next) {
    end = next;
    symptom = Optional.empty();
    redraw();
  }

  private void choose(Symptom chosen) {
    symptom = Optional.of(chosen);
    redraw();
    InView.bring(severities);
  }

  private void redraw() {
    endKeys.forEach((each, key) -> key.setSelected(each == end));
    show(
        symptoms,
        section.isEmpty()
            ? List.of(Keys.label(desk.text("feel.first"), "soft"))
            : Symptoms.at(end).stream().<Node>map(this::symptomKey).toList());
    Optional<Feel> now = symptom.flatMap(this::said);
    severities.setVisible(symptom.isPresent());
    severity.choose(now.map(Feel::severity));
    show(details, now.filter(feel -> feel.severity() > 0).map(this::details).orElse(List.of()));
  }

  /** The same nodes are left where they are, so that the focus is. */
  private static void show(FlowPane pane, List<Node> nodes) {
    if (!pane.getChildren().equals(nodes)) {
      pane.getChildren().setAll(nodes);
    }
    pane.setManaged(!nodes.isEmpty());
  }

  private ToggleButton symptomKey(Symptom each) {
    ToggleButton key = symptomKeys.computeIfAbsent(each, this::newSymptomKey);
    key.setSelected(symptom.equals(Optional.of(each)));
    key.getStyleClass().remove("was");
    if (said(each).isPresent()) {
      key.getStyleClass().add("was");
    }
    return key;
  }

  private ToggleButton newSymptomKey(Symptom each) {
    ToggleButton key = Keys.choice("symptom-" + each, desk.words().label(each), () -> choose(each));
    key.getStyleClass().add("small");
    return key;
  }

  private Optional<Feel> said(Symptom each) {
    return section.flatMap(where -> model.moto().report().feel(new Feel.Key(end, where, each)));
  }

  private void note(int bad) {
    if (section.isPresent() && symptom.isPresent()) {
      noted.accept(
          said(symptom.get())
              .map(before -> before.withSeverity(bad))
              .orElseGet(() -> Feel.of(end, section.get(), symptom.get(), bad)));
      redraw();
    }
  }

  /** Where it decides: how it hits, and at which bump. A second touch takes it back. */
  private List<Node> details(Feel feel) {
    List<Node> keys = new ArrayList<>();
    for (Bite each : Bite.values()) {
      boolean on = feel.bite().equals(Optional.of(each));
      Optional<Bite> next = on ? Optional.empty() : Optional.of(each);
      keys.add(detail("bite-" + each, each, on, with(feel, next, feel.when())));
    }
    for (When each : When.values()) {
      boolean on = feel.when().equals(Optional.of(each));
      Optional<When> next = on ? Optional.empty() : Optional.of(each);
      keys.add(detail("when-" + each, each, on, with(feel, feel.bite(), next)));
    }
    return keys;
  }

  private static Feel with(Feel feel, Optional<Bite> bite, Optional<When> when) {
    return new Feel(feel.end(), feel.section(), feel.symptom(), feel.severity(), bite, when);
  }

  /** The same key again where it is there, so that it keeps the focus. */
  private ToggleButton detail(String id, Enum<?> name, boolean on, Feel next) {
    ToggleButton key =
        details.getChildren().stream()
            .filter(node -> id.equals(node.getId()))
            .map(ToggleButton.class::cast)
            .findFirst()
            .orElseGet(() -> Keys.choice(id, desk.words().label(name), () -> {}));
    key.setOnAction(event -> noted.accept(next));
    key.setSelected(on);
    return key;
  }

  /** A digit is the severity of the chosen symptom. */
  private void typed(KeyEvent event) {
    String typed = event.getCharacter();
    if (symptom.isPresent() && typed.length() == 1 && "012345".contains(typed)) {
      note(typed.charAt(0) - '0');
      event.consume();
    }
  }
}
