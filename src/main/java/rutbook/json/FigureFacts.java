package rutbook.json;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rutbook.figures.Assumed;
import rutbook.figures.Figure;
import rutbook.figures.Need;
import rutbook.notebook.Side;

/**
 * Figures of an answer: with what was assumed for them, or with what they need; a figure under
 * assumptions is an estimate.
 */
final class FigureFacts {
  static final Facts<Need> NEED =
      Facts.line(Need.class)
          .with("quantity", Texts.TEXT, need -> Words.word(need.quantity()))
          .ifKnown("leg", Words.of(Side.class), Need::leg)
          .with("why", Texts.TEXT, need -> Words.word(need.why()));

  private FigureFacts() {}

  static Optional<Double> known(OptionalDouble figure) {
    return figure.isPresent() ? Optional.of(figure.getAsDouble()) : Optional.empty();
  }

  /** A figure as {@code {"assumed": […], "value": …}}, or {@code {"needs": […]}}. */
  static <T> Writes<Figure<T>> figure(Writes<? super T> value) {
    Facts<Figure<T>> there =
        new FactsOf<T>()
            .facts()
            .shortList("assumed", Texts.TEXT, FigureFacts::assumed)
            .with("value", value, figure -> figure.found().orElseThrow());
    Facts<Figure<T>> lacking = new FactsOf<T>().facts().list("needs", NEED, Figure::needs);
    return (figure, out) -> (figure.found().isPresent() ? there : lacking).write(figure, out);
  }

  static List<String> assumed(Figure<?> figure) {
    return figure.assumed().stream().sorted().map((Assumed each) -> Words.word(each)).toList();
  }

  /** The class of a generic type has no literal of its own. */
  private static final class FactsOf<T> {
    @SuppressWarnings("unchecked")
    Facts<Figure<T>> facts() {
      return Facts.of((Class<Figure<T>>) (Class<?>) Figure.class);
    }
  }
}
