package rutbook.ui.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import rutbook.compare.Comparison;
import rutbook.compare.Group;
import rutbook.compare.SettingDifference;
import rutbook.compare.Standing;
import rutbook.drawing.ComparedRuler;
import rutbook.drawing.Ruler;
import rutbook.drawing.RulerDrawing;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Sheet;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.words.CardWords;
import rutbook.words.CompareWords;

/** The settings of both sides by group, each on one ruler; what is the same is folded away. */
final class SettingRows extends VBox {
  private static final double NAME = 15;
  private static final double SAID = 20;
  private static final double RULER = 160;

  private final Desk desk;
  private final Comparison comparison;
  private final CompareWords words;
  private final CardWords cardWords;
  private final Map<SettingId, VBox> below = new HashMap<>();

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
    addSame();
  }

  private void addGroup(Group group) {
    List<SettingDifference> rows =
        comparison.settings().rows(group).stream().filter(row -> !row.isSame()).toList();
    if (!rows.isEmpty()) {
      getChildren().add(Keys.label(words.group(group), "group-title"));
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
    drawn.setMaxWidth(desk.em() * 34);
    HBox line =
        new HBox(10, wide(Keys.prose(name, "strong"), NAME), wide(Keys.prose(said), SAID), drawn);
    line.setAlignment(Pos.TOP_LEFT);
    VBox whole = new VBox(0, line);
    whole.setId("compare-" + setting.id());
    below.put(setting.id(), whole);
    return whole;
  }

  private RulerDrawing.Size size(double width) {
    return RulerDrawing.Size.numbered(width, desk.settingWords().numerals(), 1);
  }

  /**
   * Says below each setting what its difference does.
   *
   * @param effects one line of the trade, one of the rider's own motos
   */
  void explain(Map<SettingId, List<String>> effects) {
    effects.forEach(
        (setting, lines) ->
            lines.forEach(
                line -> below.get(setting).getChildren().add(Keys.prose(line, "soft", "effect"))));
  }

  /** Both legs on lines of their own where they moved differently, and what is wrong, last. */
  private String row(SettingDifference row, List<String> said) {
    List<String> lines = new ArrayList<>(said);
    row.to().map(cardWords::alarm).filter(alarm -> !alarm.isEmpty()).ifPresent(lines::add);
    return String.join("\n", lines);
  }

  private Label wide(Label label, double ems) {
    label.setMinWidth(desk.em() * ems);
    label.setMaxWidth(desk.em() * ems);
    return label;
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
