package rutbook.ui.rebuild;

import java.util.List;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.drawing.Chart;
import rutbook.drawing.ChartDrawing;
import rutbook.drawing.ChartLayout;
import rutbook.figures.Riding;
import rutbook.notebook.Entered;
import rutbook.rebuild.Ask;
import rutbook.rebuild.BothLegs;
import rutbook.rebuild.ChosenFill;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.ui.Desk;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.WordTable;
import rutbook.ui.fx.DrawingView;
import rutbook.words.FillWords;

/** Beside a fill while it is entered: its curve over the baseline's, and what binds it. */
final class FillPanel extends VBox {
  private static final double BASE_TEXT = 14;
  private static final double HEIGHT_IN_TEXT = 9.2;
  private static final double TEXT_SHARE = 0.9;

  private final FillWords words;
  private final Plan plan;
  private final Step step;
  private final Riding riding;
  private final Picture picture = new Picture();

  /** The curve, drawn again to whatever size it gets. */
  private static final class Picture extends Region {
    private final DrawingView drawn = new DrawingView();
    private Optional<Chart> chart = Optional.empty();

    Picture() {
      setId("fill-curve");
      setAccessibleRole(AccessibleRole.IMAGE_VIEW);
      getChildren().add(drawn);
    }

    void show(Optional<Chart> next) {
      chart = next;
      requestLayout();
    }

    private double scale() {
      return Math.max(0.8, Math.min(2, TEXT_SHARE * getHeight() / (HEIGHT_IN_TEXT * BASE_TEXT)));
    }

    @Override
    protected void layoutChildren() {
      double scale = scale();
      boolean room =
          getWidth() >= ChartLayout.Size.LEAST_WIDTH * scale
              && getHeight() >= ChartLayout.Size.LEAST_HEIGHT * scale;
      if (room) {
        ChartLayout.Size size = new ChartLayout.Size(getWidth(), getHeight(), scale);
        chart.ifPresent(each -> drawn.show(ChartDrawing.of(new ChartLayout(each, size))));
      }
      drawn.resizeRelocate(0, 0, getWidth(), getHeight());
    }
  }

  FillPanel(Desk desk, Plan plan, Step step) {
    super(6);
    this.plan = plan;
    this.step = step;
    this.words = new FillWords(desk.phrases());
    this.riding = Riding.of(desk.notebook().shelf(), desk.timeline(plan.baseline().bike()));
    setId("fill-panel");
    picture.setStyle(
        "-fx-pref-height: " + HEIGHT_IN_TEXT + "em; -fx-min-height: " + HEIGHT_IN_TEXT + "em;");
  }

  /** Whether there is anything to say beside a step. */
  static boolean serves(Plan plan, Step step) {
    return ChosenFill.applies(plan, step)
        || step.kind() == StepKind.CARTRIDGE_FILL
        || step.kind() == StepKind.PLACE_FILL;
  }

  /** Follows what would be entered now; nothing is drawn of what cannot be entered. */
  void show(Optional<Entered> entered) {
    getChildren().clear();
    entered
        .flatMap(Ask::reading)
        .ifPresent(
            typed -> {
              ChosenFill.at(plan, step, typed, riding).ifPresent(this::curve);
              BothLegs.at(plan, step, typed).ifPresent(this::legs);
            });
  }

  private void curve(ChosenFill fill) {
    words
        .table(fill)
        .ifPresent(
            table -> {
              WordTable shown = new WordTable(table);
              shown.setId("fill-figures");
              picture.setAccessibleText(shown.getAccessibleText());
              getChildren().add(shown);
            });
    said("fill-room", words.room(fill));
    Optional<Chart> chart = words.chart(fill);
    picture.show(chart);
    if (chart.isPresent()) {
      getChildren().add(picture);
    }
    words.lacks(fill).ifPresent(line -> getChildren().add(Keys.prose(line, "soft")));
    said("fill-assumed", words.assumed(fill));
  }

  private void said(String id, List<String> lines) {
    if (!lines.isEmpty()) {
      var prose = Keys.prose(String.join(" ", lines), "condensed");
      prose.setId(id);
      getChildren().add(prose);
    }
  }

  private void legs(BothLegs legs) {
    var said = Keys.prose(words.legs(legs), legs.differ() ? "due" : "strong");
    said.setId("fill-legs");
    getChildren().add(0, said);
  }
}
