package rutbook.ui.controls;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;

/** Two things: the second beside the first where there is room for it, below it otherwise. */
public final class BesideOrBelow extends Region {
  private static final double GAP = 24;
  private static final double GAP_ABOVE = 4;

  private final Region first;
  private final Region second;
  private final double least;
  private final double wanted;

  /**
   * The second as wide as it is by itself.
   *
   * @param least width of the first in pixels, below which nothing stands beside it
   */
  public BesideOrBelow(Region first, Region second, double least) {
    this(first, second, least, USE_COMPUTED_SIZE);
  }

  /**
   * @param least width of the first in pixels, below which nothing stands beside it
   * @param wanted width of the second beside it, in pixels
   */
  public BesideOrBelow(Region first, Region second, double least, double wanted) {
    this.first = first;
    this.second = second;
    this.least = least;
    this.wanted = wanted;
    getChildren().addAll(first, second);
  }

  private double wanted() {
    return wanted == USE_COMPUTED_SIZE ? second.prefWidth(-1) : wanted;
  }

  private boolean isBeside(double width) {
    return width >= least + GAP + wanted();
  }

  /** What the first is given of a width. */
  private double left(double width) {
    return isBeside(width) ? width - GAP - wanted() : width;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(first.minWidth(-1), 0);
  }

  @Override
  protected double computePrefWidth(double height) {
    return least;
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    double wide = width < 0 ? least : width;
    double one = first.prefHeight(left(wide));
    return isBeside(wide) ? Math.max(one, second.prefHeight(wanted())) : one + below(wide);
  }

  /** What the second takes below the first; nothing when there is nothing in it. */
  private double below(double width) {
    double height = second.prefHeight(width);
    return height > 0 ? GAP_ABOVE + height : 0;
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double one = first.prefHeight(left(width));
    first.resizeRelocate(0, 0, left(width), one);
    if (isBeside(width)) {
      second.resizeRelocate(width - wanted(), 0, wanted(), second.prefHeight(wanted()));
    } else {
      second.resizeRelocate(0, one + GAP_ABOVE, width, second.prefHeight(width));
    }
  }
}
