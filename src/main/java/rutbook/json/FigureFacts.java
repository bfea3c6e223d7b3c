package rutbook.json;

import java.util.Optional;
import java.util.OptionalDouble;
import rutbook.figures.Need;
import rutbook.notebook.Side;

/** Figures of an answer: what they need, and what was assumed for them. */
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
}
