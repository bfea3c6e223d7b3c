package rutbook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.ml;
import static rutbook.notebook.Bench.turns;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Numerals;

/** A ruler at every width from a narrow strip to a whole page: no number is cut or run over. */
class RulerWidthsTest {
  private static final double LEAST = 120;
  private static final double MOST = 900;

  /** A scale with everything on it that it may show, the other leg at another place. */
  private static Ruler full(
      Amount least, Amount most, Amount step, boolean stops, Amount left, Amount right) {
    return new Ruler(
            new Range(least, most),
            step,
            stops,
            Optional.of(left),
            Optional.of(right),
            Ruler.Marks.NONE)
        .withBaseline(Reading.of(left))
        .withPrevious(Reading.of(least))
        .withProposal(Reading.of(most));
  }

  private static List<Ruler> rulers() {
    Ruler oil = full(ml("250"), ml("420"), ml("5"), false, ml("335"), ml("340"));
    return List.of(
        full(turns("0"), turns("4"), turns("0.5"), true, turns("1.5"), turns("2")),
        full(turns("0"), turns("8"), turns("0.5"), true, turns("0"), turns("8")),
        full(clicks(0), clicks(40), clicks(1), true, clicks(12), clicks(14)),
        full(clicks(0), clicks(40), clicks(1), true, clicks(40), clicks(0)),
        oil,
        oil.in(Display.US));
  }

  private static double left(Shape.Text text) {
    double width = TextWidth.of(text.text(), text.size());
    return switch (text.anchor()) {
      case START -> text.x();
      case MIDDLE -> text.x() - width / 2;
      case END -> text.x() - width;
    };
  }

  private static double right(Shape.Text text) {
    return left(text) + TextWidth.of(text.text(), text.size());
  }

  private static List<String> faults(Ruler ruler, RulerDrawing.Size size) {
    List<String> faults = new ArrayList<>();
    Drawing drawing = RulerDrawing.of(ruler, size);
    List<Shape.Text> texts = drawing.shapes(Shape.Text.class);
    for (int i = 0; i < texts.size(); i++) {
      Shape.Text one = texts.get(i);
      if (left(one) < -0.01 || right(one) > size.width() + 0.01 || one.y() > size.height()) {
        faults.add("“" + one.text() + "” is cut at " + size);
      }
      for (Shape.Text other : texts.subList(i + 1, texts.size())) {
        boolean sameLine = Math.abs(one.y() - other.y()) < one.size();
        if (sameLine && left(one) < right(other) && left(other) < right(one)) {
          faults.add("“" + one.text() + "” runs over “" + other.text() + "” at " + size);
        }
      }
    }
    return faults;
  }

  @Test
  void noNumberIsCutOrRunOverFromNarrowToWide() {
    List<String> faults = new ArrayList<>();
    int labelled = 0;
    for (Ruler ruler : rulers()) {
      for (double width = LEAST; width <= MOST; width += 5) {
        for (double scale : new double[] {1, 1.25, 1.5}) {
          for (boolean labels : new boolean[] {false, true}) {
            RulerDrawing.Size size =
                labels
                    ? RulerDrawing.Size.numbered(width, Numerals.POINT, scale)
                    : RulerDrawing.Size.bare(width, scale);
            faults.addAll(faults(ruler, size));
            labelled += RulerDrawing.of(ruler, size).shapes(Shape.Text.class).size();
          }
        }
      }
    }
    assertThat(faults).isEmpty();
    assertThat(labelled).as("numbers looked at").isGreaterThan(10_000);
  }
}
