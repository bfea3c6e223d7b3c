package rutbook.ui.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.drawing.SectionGlyph;
import rutbook.edit.MotoEdit;
import rutbook.notebook.Bite;
import rutbook.notebook.End;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.notebook.When;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.fx.DrawingView;

/**
 * Fast feel entry: where, what, how badly, one touch each; what bothered before waits at the right
 * for one touch, and trust for one more.
 */
final class FeelEntry extends VBox {
  private static final int SECTIONS_IN_A_ROW = 8;
  private static final int WORST = 5;

  private final Desk desk;
  private final EntryId session;
  private final Map<Section, ToggleButton> sections = new EnumMap<>(Section.class);
  private final HBox ends = new HBox(8);
  private final FlowPane symptoms = new FlowPane(8, 8);
  private final HBox severities = new HBox(6);
  private final VBox left = new VBox(10);
  private final VBox right = new VBox(8);
  private FeelModel model;
  private Optional<Section> section = Optional.empty();
  private End end = End.FRONT;
  private Optional<Symptom> symptom = Optional.empty();

  FeelEntry(Desk desk, EntryId session) {
    super(12);
    this.desk = desk;
    this.session = session;
    setId("feel-entry");
    GridPane halves = new GridPane();
    halves.setHgap(28);
    ColumnConstraints half = new ColumnConstraints();
    half.setPercentWidth(52);
    ColumnConstraints other = new ColumnConstraints();
    other.setPercentWidth(48);
    halves.getColumnConstraints().addAll(half, other);
    halves.addRow(0, left, right);
    left.getChildren().addAll(ends, symptoms, severities);
    getChildren().addAll(lap(), halves);
    addEventHandler(KeyEvent.KEY_TYPED, this::typed);
  }

  /** The lap as two rows of sections. */
  private Node lap() {
    GridPane lap = new GridPane();
    lap.setId("feel-lap");
    lap.setHgap(5);
    lap.setVgap(5);
    for (int i = 0; i < SECTIONS_IN_A_ROW; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(100.0 / SECTIONS_IN_A_ROW);
      lap.getColumnConstraints().add(column);
    }
    for (Section each : Section.values()) {
      ToggleButton key =
          Keys.choice("section-" + each, desk.words().label(each), () -> choose(each));
      DrawingView glyph = new DrawingView();
      glyph.show(SectionGlyph.of(each, 56, 15));
      glyph.setMinSize(56, 15);
      glyph.setMaxSize(56, 15);
      key.setGraphic(glyph);
      key.getStyleClass().add("section-key");
      key.setMaxWidth(Double.MAX_VALUE);
      key.setMinWidth(0);
      sections.put(each, key);
      lap.add(key, each.ordinal() % SECTIONS_IN_A_ROW, each.ordinal() / SECTIONS_IN_A_ROW);
    }
    return lap;
  }

  void show(FeelModel newModel) {
    if (model == null || !model.moto().id().equals(newModel.moto().id())) {
      section = Optional.empty();
      symptom = Optional.empty();
    }
    model = newModel;
    redraw();
  }

  private void redraw() {
    sections.forEach((each, key) -> key.setSelected(section.equals(Optional.of(each))));
    showEnds();
    showSymptoms();
    showSeverities();
    right.getChildren().setAll(rightSide());
  }

  private void choose(Section chosen) {
    section = Optional.of(chosen);
    symptom = Optional.empty();
    redraw();
  }

  private void showEnds() {
    List<Node> keys = new ArrayList<>();
    for (End each : End.values()) {
      ToggleButton key =
          Keys.choice(
              "end-" + each,
              upper(desk.words().name(each)),
              () -> {
                end = each;
                symptom = Optional.empty();
                redraw();
              });
      key.setSelected(each == end);
      keys.add(key);
    }
    ends.getChildren().setAll(keys);
  }

  private static String upper(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  private void showSymptoms() {
    if (section.isEmpty()) {
      symptoms.getChildren().setAll(Keys.label(desk.text("feel.first"), "soft"));
      return;
    }
    List<Node> keys = new ArrayList<>();
    for (Symptom each : Symptoms.at(end)) {
      ToggleButton key =
          Keys.choice(
              "symptom-" + each,
              upper(desk.words().name(each)),
              () -> {
                symptom = Optional.of(each);
                redraw();
              });
      key.setSelected(symptom.equals(Optional.of(each)));
      if (noted(each).isPresent()) {
        key.getStyleClass().add("was");
      }
      keys.add(key);
    }
    symptoms.getChildren().setAll(keys);
  }

  private Optional<Feel> noted(Symptom each) {
    return section.flatMap(where -> model.moto().report().feel(new Feel.Key(end, where, each)));
  }

  private void showSeverities() {
    severities.setAlignment(Pos.CENTER_LEFT);
    severities.setVisible(symptom.isPresent());
    Optional<Feel> now = symptom.flatMap(this::noted);
    List<Node> keys = new ArrayList<>();
    for (int i = 0; i <= WORST; i++) {
      int severity = i;
      ToggleButton key = Keys.choice("severity-" + i, Integer.toString(i), () -> note(severity));
      key.getStyleClass().add("digit");
      key.setAccessibleText(desk.text("feel.severity", i));
      key.setSelected(now.isPresent() && now.get().severity() == i);
      keys.add(key);
    }
    keys.add(Keys.label(desk.text("feel.zero"), "soft", "condensed"));
    severities.getChildren().setAll(keys);
    left.getChildren().setAll(ends, symptoms, severities);
    now.filter(feel -> feel.severity() > 0).ifPresent(feel -> left.getChildren().add(bite(feel)));
  }

  private void note(int severity) {
    if (section.isEmpty() || symptom.isEmpty()) {
      return;
    }
    Feel feel =
        noted(symptom.get())
            .map(before -> before.withSeverity(severity))
            .orElseGet(() -> Feel.of(end, section.get(), symptom.get(), severity));
    note(feel);
  }

  private void note(Feel feel) {
    desk.make(new MotoEdit.NoteFeel(session, model.moto().id(), feel));
    redraw();
  }

  /** Where it decides: how it hits, and at which bump. A second touch takes it back. */
  private Node bite(Feel feel) {
    FlowPane row = new FlowPane(6, 6);
    row.setId("feel-bite");
    for (Bite each : Bite.values()) {
      boolean on = feel.bite().equals(Optional.of(each));
      Optional<Bite> next = on ? Optional.empty() : Optional.of(each);
      row.getChildren()
          .add(detail("bite-" + each, desk.words().name(each), on, with(feel, next, feel.when())));
    }
    for (When each : When.values()) {
      boolean on = feel.when().equals(Optional.of(each));
      Optional<When> next = on ? Optional.empty() : Optional.of(each);
      row.getChildren()
          .add(detail("when-" + each, desk.words().name(each), on, with(feel, feel.bite(), next)));
    }
    return row;
  }

  private static Feel with(Feel feel, Optional<Bite> bite, Optional<When> when) {
    return new Feel(feel.end(), feel.section(), feel.symptom(), feel.severity(), bite, when);
  }

  private ToggleButton detail(String id, String text, boolean on, Feel next) {
    ToggleButton key = Keys.choice(id, text, () -> note(next));
    key.setSelected(on);
    return key;
  }

  private List<Node> rightSide() {
    List<Node> nodes = new ArrayList<>();
    nodes.add(Keys.label(desk.text("feel.trust"), "group-title"));
    nodes.add(trust());
    nodes.add(Keys.label(desk.text("feel.still"), "group-title"));
    if (model.standing().isEmpty()) {
      nodes.add(Keys.label(desk.text("feel.still.none"), "soft"));
    }
    int place = 0;
    for (FeelModel.Standing standing : model.standing()) {
      nodes.add(standing(standing, place++));
    }
    for (Feel feel : model.fresh()) {
      nodes.add(fresh(feel));
    }
    return nodes;
  }

  private Node named(Feel feel) {
    String text =
        desk.text(
            "feel.symptom",
            desk.words().name(feel.end()),
            desk.words().name(feel.symptom()),
            desk.words().name(feel.section()));
    var label = Keys.label(text, "condensed");
    label.setMinWidth(60);
    label.setWrapText(true);
    HBox.setHgrow(label, Priority.ALWAYS);
    label.setMaxWidth(Double.MAX_VALUE);
    return label;
  }

  /** One touch says gone, the same, or how bad it is now; the last severity is ringed. */
  private Node standing(FeelModel.Standing standing, int place) {
    HBox row = new HBox(4, named(standing.last()));
    row.setAlignment(Pos.CENTER_LEFT);
    for (int i = 0; i <= WORST; i++) {
      Feel next = standing.last().withSeverity(i);
      String text = i == 0 ? desk.text("feel.gone") : Integer.toString(i);
      ToggleButton key = Keys.choice("still-" + place + "-" + i, text, () -> note(next));
      key.setStyle("-fx-padding: 0; -fx-min-width: 44px; -fx-pref-width: 44px;");
      key.getStyleClass().add("number");
      boolean on = standing.now().equals(OptionalInt.of(i));
      key.setSelected(on);
      if (!on && i == standing.last().severity()) {
        key.getStyleClass().add("was");
      }
      row.getChildren().add(key);
    }
    return row;
  }

  private Node fresh(Feel feel) {
    Region gap = new Region();
    var back =
        Keys.smallKey(
            "take-back-" + feel.end() + "-" + feel.section() + "-" + feel.symptom(),
            desk.text("feel.take.back"),
            () -> desk.make(new MotoEdit.ForgetFeel(session, model.moto().id(), feel.key())));
    HBox row =
        new HBox(
            10,
            named(feel),
            gap,
            new rutbook.ui.controls.Severity(feel.severity(), desk.text("feel.gone")),
            back);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  private Node trust() {
    GridPane row = new GridPane();
    row.setHgap(4);
    for (int i = 1; i <= 10; i++) {
      int trust = i;
      ToggleButton key = Keys.choice("trust-" + i, Integer.toString(i), () -> trust(trust));
      key.getStyleClass().add("number");
      key.setStyle("-fx-padding: 0;");
      key.setMaxWidth(Double.MAX_VALUE);
      key.setAccessibleText(desk.text("moto.trust", i));
      key.setSelected(model.moto().report().trust().equals(OptionalInt.of(i)));
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(10);
      row.getColumnConstraints().add(column);
      row.add(key, i - 1, 0);
    }
    return row;
  }

  private void trust(int trust) {
    boolean again = model.moto().report().trust().equals(OptionalInt.of(trust));
    OptionalInt next = again ? OptionalInt.empty() : OptionalInt.of(trust);
    desk.make(new MotoEdit.Trust(session, model.moto().id(), next));
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
