package rutbook.ui.controls;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import rutbook.drawing.Chart;
import rutbook.drawing.ChartDrawing;
import rutbook.drawing.ChartLayout;
import rutbook.drawing.Drawing;
import rutbook.ui.fx.DrawingView;
import rutbook.words.ChartWords;

/**
 * A chart to look at: values under the pointer or, with the arrow keys, under a line that is moved
 * along it; the same as a table.
 */
public final class ChartView extends VBox {
  private static final int TABLE_ROWS = 11;
  private static final double STEPS = 50;
  private static final double BASE_TEXT = 14;

  /** The chart and, over it, the pointer. */
  private final class Picture extends Region {
    private final DrawingView drawn = new DrawingView();
    private final DrawingView pointer = new DrawingView();

    Picture() {
      getChildren().addAll(drawn, pointer);
      pointer.setMouseTransparent(true);
      widthProperty().addListener((width, before, now) -> redraw());
      heightProperty().addListener((height, before, now) -> redraw());
    }

    @Override
    protected void layoutChildren() {
      drawn.resizeRelocate(0, 0, getWidth(), getHeight());
      pointer.resizeRelocate(0, 0, getWidth(), getHeight());
    }
  }

  private final Picture picture = new Picture();
  private final Label reading = Keys.prose("", "condensed");
  private final ToggleButton asTable;
  private final Supplier<ChartWords> words;
  private final HBox below;
  private final VBox last;
  private final String hint;
  private Chart chart;
  private ChartLayout layout;
  private double across;

  /**
   * @param id of the chart; its table key has it too
   * @param hint what is said below it until something is pointed at
   * @param words for its readings, in the units of the moment
   */
  public ChartView(
      String id, String hint, String tableKey, double height, Supplier<ChartWords> words) {
    super(6);
    this.hint = hint;
    this.words = words;
    setId(id);
    picture.setId(id + "-picture");
    picture.setPrefHeight(height);
    picture.setMinHeight(ChartLayout.Size.LEAST_HEIGHT * 2);
    picture.setFocusTraversable(true);
    picture.setAccessibleRole(AccessibleRole.SLIDER);
    picture.getStyleClass().add("ruler-control");
    picture.addEventHandler(MouseEvent.MOUSE_MOVED, event -> pointAt(event.getX()));
    picture.addEventHandler(MouseEvent.MOUSE_DRAGGED, event -> pointAt(event.getX()));
    picture.addEventHandler(MouseEvent.MOUSE_PRESSED, event -> picture.requestFocus());
    picture.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    reading.setId(id + "-reading");
    asTable = Keys.choice(id + "-table-key", tableKey, this::layOut);
    below = new HBox(8, asTable);
    last = new VBox(6, below);
    layOut();
  }

  public void show(Chart next) {
    boolean same = next.equals(chart);
    chart = next;
    if (!same) {
      across = chart.across().least();
      reading.setText(hint);
      picture.pointer.setVisible(false);
      redraw();
      layOut();
    }
  }

  /** A key that stands beside that of the table, and what it tells below both. */
  public void with(Node key, Node told) {
    below.getChildren().add(key);
    last.getChildren().add(told);
  }

  /** The chart in another size, without the pointer; empty before there is one. */
  public Optional<Drawing> drawn(double width, double height) {
    return Optional.ofNullable(chart)
        .map(it -> ChartDrawing.of(it, new ChartLayout.Size(width, height, 1)));
  }

  private void layOut() {
    if (asTable.isSelected() && chart != null) {
      getChildren().setAll(new WordTable(words.get().table(chart, TABLE_ROWS)), last);
    } else {
      getChildren().setAll(picture, reading, last);
    }
  }

  private void redraw() {
    double scale = Math.max(0.8, reading.getFont().getSize() / BASE_TEXT);
    boolean room =
        picture.getWidth() >= ChartLayout.Size.LEAST_WIDTH * scale
            && picture.getHeight() >= ChartLayout.Size.LEAST_HEIGHT * scale;
    if (chart != null && room) {
      layout =
          new ChartLayout(
              chart, new ChartLayout.Size(picture.getWidth(), picture.getHeight(), scale));
      picture.drawn.show(ChartDrawing.of(layout));
      picture.setAccessibleText(
          chart.up().title() + ", " + chart.across().title() + ". " + reading.getText());
    }
  }

  private void pointAt(double x) {
    if (layout != null) {
      point(layout.across(x));
    }
  }

  private void point(double place) {
    Chart.Reading at = chart.at(place);
    across = at.across();
    picture.pointer.setVisible(true);
    picture.pointer.show(ChartDrawing.pointer(layout, at));
    reading.setText(words.get().reading(chart, at));
    picture.setAccessibleText(reading.getText());
  }

  private void key(KeyEvent event) {
    if (layout == null) {
      return;
    }
    double least = chart.across().least();
    double most = chart.across().most();
    double step = (most - least) / STEPS;
    switch (event.getCode()) {
      case RIGHT, UP -> point(across + step);
      case LEFT, DOWN -> point(across - step);
      case HOME -> point(least);
      case END -> point(most);
      default -> {
        return;
      }
    }
    event.consume();
  }
}
