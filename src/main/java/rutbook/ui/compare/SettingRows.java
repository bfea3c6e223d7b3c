package rutbook.ui.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.compare.Comparison;
import rutbook.compare.Group;
import rutbook.compare.SettingDifference;
import rutbook.compare.Standing;
import rutbook.drawing.ComparedRuler;
import rutbook.drawing.Ruler;
import rutbook.drawing.RulerDrawing;
import rutbook.notebook.Datum;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Sheet;
import rutbook.ui.Desk;
import rutbook.ui.controls.BesideOrBelow;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.words.CardWords;
import rutbook.words.CompareWords;

/** The settings of both sides by group, each on one ruler; what is the same is folded away. */
final class SettingRows extends VBox {
  private static final double NAME = 15;
  private static final double SAID = 20;
  private static final double RULER = 160;
  private static final double BEFORE_EFFECTS = 60;
  private static final double EFFECTS = 32;
  private static final double OVER_GROUP = 8;

  private final Desk desk;
  private final Comparison comparison;
  private final CompareWords words;
  private final CardWords cardWords;
  private final Map<SettingId, VBox> effectsOf = new HashMap<>();
  private final BooleanProperty effects = new SimpleBooleanProperty(true);

  SettingRows(Desk desk, Comparison comparison) {
    super(8);
    this.desk = desk;
    this.comparison = comparison;
    this.words = new CompareWords(desk.phrases());
    this.cardWords = new CardWords(desk.phrases());
    setId("compare-settings");
    for (Group group : Group.values()) {
      addGroup(group);
    }
    if (comparison.settings().isSame()) {
      getChildren().add(Keys.prose(cardWords.say("same.nothing")));
    }
    addCounted();
    addSame();
  }

  /** From where what differs is counted. */
  private void addCounted() {
    if (comparison.settings().differing().stream()
        .anyMatch(row -> row.setting().scale().datum() == Datum.OUT_FROM_CLOSED)) {
      getChildren().add(Keys.prose(cardWords.say("how.OUT_FROM_CLOSED"), "soft"));
    }
  }

  private void addGroup(Group group) {
    List<SettingDifference> rows =
        comparison.settings().rows(group).stream().filter(row -> !row.isSame()).toList();
    if (!rows.isEmpty()) {
      Label title = Keys.label(words.group(group), "group-title");
      VBox.setMargin(title, new Insets(getChildren().isEmpty() ? 0 : OVER_GROUP, 0, 0, 0));
      getChildren().add(title);
    }
    rows.forEach(row -> getChildren().add(row(row)));
  }

  private Node row(SettingDifference row) {
    Setting setting = row.setting();
    String name = words.setting(setting);
    String said = row(row, words.difference(row));
    Sheet sheet = row.onlyBefore() ? comparison.from().sheet() : comparison.to().sheet();
    Ruler ruler =
        Ruler.of(sheet, setting, row.to().or(row::from).orElseThrow().reading())
            .in(desk.settingWords().display());
    WideDrawing drawn =
        new WideDrawing(
            RULER,
            size(RULER).height(),
            width -> ComparedRuler.of(ruler, amounts(row.from()), amounts(row.to()), size(width)),
            name + ": " + said);
    HBox.setHgrow(drawn, Priority.ALWAYS);
    drawn.setMaxWidth(desk.em() * 40);
    HBox line = new HBox(10, wide(name(setting), NAME), wide(Keys.prose(said), SAID), drawn);
    line.setAlignment(Pos.TOP_LEFT);
    VBox effect = new VBox(2);
    effect.visibleProperty().bind(effects);
    effectsOf.put(setting.id(), effect);
    BesideOrBelow whole =
        new BesideOrBelow(line, effect, desk.em() * BEFORE_EFFECTS, desk.em() * EFFECTS);
    whole.setId("compare-" + setting.id());
    return whole;
  }

  private RulerDrawing.Size size(double width) {
    return RulerDrawing.Size.numbered(width, desk.settingWords().numerals(), 1);
  }

  /**
   * Says below each setting what its difference does.
   *
   * @param explained one line of the trade, one of the rider's own motos
   */
  void explain(Map<SettingId, List<String>> explained) {
    explained.forEach(
        (setting, lines) ->
            lines.forEach(line -> effectsOf.get(setting).getChildren().add(effect(line))));
  }

  private Label effect(String line) {
    Label effect = Keys.prose(line, "soft", "effect");
    effect.visibleProperty().bind(effects);
    effect.managedProperty().bind(effects);
    return effect;
  }

  /** Whether what each difference does is shown, or folded away. */
  void showEffects(boolean shown) {
    effects.set(shown);
  }

  /** Shows what is the same, too. */
  void unfold() {
    Node fold = lookup("#compare-same");
    if (fold != null) {
      lookup("#compare-same-list").setVisible(true);
      Label said = Keys.label(((ToggleButton) fold).getText(), "group-title");
      getChildren().set(getChildren().indexOf(fold), said);
    }
  }

  /** Both legs on lines of their own where they moved differently, and what is wrong, last. */
  private String row(SettingDifference row, List<String> said) {
    List<String> lines = new ArrayList<>(said);
    row.to().map(cardWords::alarm).filter(alarm -> !alarm.isEmpty()).ifPresent(lines::add);
    return String.join("\n", lines);
  }

  /** With the leg or legs that it is in, small below it. */
  private VBox name(Setting setting) {
    VBox name = new VBox(Keys.prose(words.setting(setting), "strong"));
    String legs = cardWords.legs(setting);
    if (!legs.isEmpty()) {
      name.getChildren().add(Keys.label(legs, "soft", "condensed"));
    }
    return name;
  }

  private Region wide(Region region, double ems) {
    region.setMinWidth(desk.em() * ems);
    region.setMaxWidth(desk.em() * ems);
    return region;
  }

  private static List<Amount> amounts(Optional<Standing> standing) {
    List<Amount> amounts = standing.map(it -> it.reading().amounts()).orElse(List.of());
    return amounts.size() == 2 && amounts.get(0).sameQuantity(amounts.get(1))
        ? amounts.subList(0, 1)
        : amounts;
  }

  private void addSame() {
    List<SettingDifference> same =
        comparison.settings().rows().stream().filter(SettingDifference::isSame).toList();
    if (same.isEmpty()) {
      return;
    }
    Label list =
        Keys.prose(
            same.stream()
                .map(
                    row ->
                        cardWords.say(
                            "same.row",
                            words.setting(row.setting()),
                            cardWords.reading(row.setting(), row.to().orElseThrow().reading())))
                .collect(Collectors.joining(" · ")));
    list.setId("compare-same-list");
    list.setVisible(false);
    list.managedProperty().bind(list.visibleProperty());
    ToggleButton[] fold = new ToggleButton[1];
    fold[0] =
        Keys.choice(
            "compare-same",
            desk.phrases().say("Cli", "same", same.size()),
            () -> list.setVisible(fold[0].isSelected()));
    fold[0].getStyleClass().add("small");
    getChildren().addAll(fold[0], list);
  }
}
