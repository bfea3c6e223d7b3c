package rutbook.ui.compare;

import java.util.List;
import java.util.function.IntConsumer;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import rutbook.drawing.StepLine;
import rutbook.ui.fx.DrawingView;

/**
 * The step line of a setting to point at: the arrows go from step to step, a touch or Enter opens
 * the one pointed at.
 */
final class SettingLine extends Region {
  private static final double LEAST_WIDTH = 240;
  private static final double HEIGHT = 190;

  private final DrawingView drawn = new DrawingView();
  private final DrawingView pointer = new DrawingView();
  private final StepLine.Season season;
  private final List<String> said;
  private final IntConsumer pointed;
  private final IntConsumer opened;
  private StepLine line;
  private int place;

  /**
   * @param said each step in words
   * @param pointed is told of the step that is pointed at
   * @param opened is told of the one that was opened
   */
  SettingLine(StepLine.Season season, List<String> said, IntConsumer pointed, IntConsumer opened) {
    this.season = season;
    this.said = List.copyOf(said);
    this.pointed = pointed;
    this.opened = opened;
    this.place = said.size() - 1;
    setId("season-line");
    setMinSize(LEAST_WIDTH, HEIGHT);
    setPrefHeight(HEIGHT);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.SLIDER);
    getStyleClass().add("ruler-control");
    pointer.setMouseTransparent(true);
    drawn.setMouseTransparent(true);
    getChildren().addAll(drawn, pointer);
    widthProperty().addListener((width, before, now) -> redraw());
    addEventHandler(MouseEvent.MOUSE_MOVED, event -> pointAt(event.getX()));
    addEventHandler(MouseEvent.MOUSE_CLICKED, this::clicked);
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
  }

  @Override
  protected void layoutChildren() {
    drawn.resizeRelocate(0, 0, getWidth(), getHeight());
    pointer.resizeRelocate(0, 0, getWidth(), getHeight());
  }

  private void redraw() {
    if (getWidth() >= LEAST_WIDTH) {
      line = new StepLine(season, getWidth(), HEIGHT);
      drawn.show(line.drawing());
      point(place);
    }
  }

  private void pointAt(double x) {
    if (line != null) {
      point(line.nearest(x));
    }
  }

  private void point(int next) {
    place = Math.max(0, Math.min(said.size() - 1, next));
    pointer.show(line.pointer(place));
    setAccessibleText(said.get(place));
    pointed.accept(place);
  }

  private void clicked(MouseEvent event) {
    if (event.getButton() == MouseButton.PRIMARY) {
      requestFocus();
      pointAt(event.getX());
      opened.accept(place);
    }
  }

  private void key(KeyEvent event) {
    if (line == null) {
      return;
    }
    switch (event.getCode()) {
      case RIGHT, UP -> point(place + 1);
      case LEFT, DOWN -> point(place - 1);
      case HOME -> point(0);
      case END -> point(said.size() - 1);
      case ENTER, SPACE -> opened.accept(place);
      default -> {
        return;
      }
    }
    event.consume();
  }
}
