package rutbook.ui.controls;

import rutbook.drawing.Ruler;
import rutbook.drawing.RulerDrawing;
import rutbook.ui.fx.DrawingView;

/** A ruler to look at, as wide as it is given room. */
public class RulerView extends DrawingView {
  private final boolean labelled;
  private final double scale;
  private Ruler ruler;

  public RulerView(boolean labelled, double scale) {
    this.labelled = labelled;
    this.scale = scale;
    setMinWidth(RulerDrawing.Size.LEAST_WIDTH);
    setMinHeight(size(120).height());
    widthProperty().addListener((width, before, now) -> redraw());
  }

  public final void show(Ruler newRuler) {
    ruler = newRuler;
    redraw();
  }

  public final Ruler ruler() {
    return ruler;
  }

  private RulerDrawing.Size size(double width) {
    return new RulerDrawing.Size(Math.max(width, RulerDrawing.Size.LEAST_WIDTH), labelled, scale);
  }

  private void redraw() {
    if (ruler != null && getWidth() >= RulerDrawing.Size.LEAST_WIDTH) {
      show(RulerDrawing.of(ruler, size(getWidth())));
    }
  }

  final rutbook.drawing.RulerScale scaleNow() {
    return RulerDrawing.scale(ruler, size(getWidth()));
  }

  @Override
  protected double computePrefHeight(double width) {
    return size(120).height();
  }

  @Override
  protected double computePrefWidth(double height) {
    return 120;
  }
}
