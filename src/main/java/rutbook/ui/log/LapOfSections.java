package rutbook.ui.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import rutbook.drawing.SectionGlyph;
import rutbook.notebook.Section;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.OneStop;
import rutbook.ui.fx.DrawingView;

/** The lap as rows of sections, each with a small line of what the ground does there. */
final class LapOfSections extends GridPane {
  private static final int FEW = 4;
  private static final int MANY = 8;
  private static final double KEY_WIDTH_EM = 5.9;
  private static final double GLYPH_WIDTH = 56;
  private static final double GLYPH_HEIGHT = 15;

  private final Desk desk;
  private final Map<Section, ToggleButton> keys = new EnumMap<>(Section.class);

  LapOfSections(Desk desk, Consumer<Section> chosen) {
    this.desk = desk;
    setId("feel-lap");
    setHgap(5);
    setVgap(5);
    for (Section section : Section.values()) {
      ToggleButton key =
          Keys.choice(
              "section-" + section, desk.words().label(section), () -> chosen.accept(section));
      DrawingView glyph = new DrawingView();
      glyph.show(SectionGlyph.of(section, GLYPH_WIDTH, GLYPH_HEIGHT));
      glyph.setMinSize(GLYPH_WIDTH, GLYPH_HEIGHT);
      glyph.setMaxSize(GLYPH_WIDTH, GLYPH_HEIGHT);
      key.setGraphic(glyph);
      key.getStyleClass().add("section-key");
      key.setWrapText(true);
      key.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
      key.setMinWidth(0);
      keys.put(section, key);
      getChildren().add(key);
    }
    arrange(FEW);
    OneStop.of(this);
    widthProperty().addListener((width, before, now) -> fit());
  }

  /** Two rows where they leave a key room for its name, or else four. */
  private void fit() {
    arrange(getWidth() >= MANY * KEY_WIDTH_EM * desk.em() ? MANY : FEW);
  }

  private void arrange(int columns) {
    if (getColumnConstraints().size() == columns) {
      return;
    }
    List<ColumnConstraints> all = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(100.0 / columns);
      all.add(column);
    }
    getColumnConstraints().setAll(all);
    keys.forEach(
        (section, key) ->
            setConstraints(key, section.ordinal() % columns, section.ordinal() / columns));
  }

  void show(Optional<Section> chosen) {
    keys.forEach((section, key) -> key.setSelected(chosen.equals(Optional.of(section))));
  }

  /** Puts the focus on a section, or on the first. */
  void focus(Optional<Section> section) {
    keys.get(section.orElse(Section.values()[0])).requestFocus();
  }
}
