package rutbook.ui.controls;

import java.util.Optional;
import rutbook.drawing.Ruler;
import rutbook.drawing.RulerDrawing;
import rutbook.ui.fx.DrawingView;
import rutbook.units.Numerals;

/** A ruler to look at, as wide as it is given room. */
public class RulerView extends DrawingView {
  private final Optional<Numerals> numbers;
  private final double scale;
  private Ruler ruler;

  /** Without numbers. */
  public RulerView(double scale) {
    this(Optional.empty(), scale);
  }

  /** With numbers under the ticks. */
  public RulerView(Numerals numerals, double scale) {
    this(Optional.of(numerals), scale);
  }

  private RulerView(Optional<Numerals> numbers, double scale) {
    this.numbers = numbers;
    this.scale = scale;
    setMinWidth(RulerDrawing.Size.LEAST_WIDTH);
    setMinHeight(size(120).height());
  }

  /** Drawn once its width is settled, not at each that a layout tries. */
  @Override
  protected void layoutChildren() {
    redraw();
    super.layoutChildren();
  }

  public final void show(Ruler newRuler) {
    ruler = newRuler;
    redraw();
  }

  public final Ruler ruler() {
    return ruler;
  }

  private RulerDrawing.Size size(double width) {
    return new RulerDrawing.Size(Math.max(width, RulerDrawing.Size.LEAST_WIDTH), numbers, scale);
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
