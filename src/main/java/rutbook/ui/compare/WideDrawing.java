package rutbook.ui.compare;

import java.util.function.DoubleFunction;
import rutbook.drawing.Drawing;
import rutbook.ui.fx.DrawingView;

/** A drawing as wide as it is given room. */
final class WideDrawing extends DrawingView {
  private final double least;
  private final double height;
  private final DoubleFunction<Drawing> drawn;

  /**
   * @param drawn makes it for a width in pixels
   * @param said what it shows, in words
   */
  WideDrawing(double least, double height, DoubleFunction<Drawing> drawn, String said) {
    this.least = least;
    this.height = height;
    this.drawn = drawn;
    setMinSize(least, height);
    setAccessibleText(said);
    widthProperty().addListener((width, before, now) -> redraw());
  }

  private void redraw() {
    if (getWidth() >= least) {
      show(drawn.apply(getWidth()));
    }
  }

  @Override
  protected double computePrefHeight(double width) {
    return height;
  }

  @Override
  protected double computePrefWidth(double height) {
    return least;
  }
}
