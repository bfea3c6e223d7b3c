package rutbook.compare;

import rutbook.figures.Figure;
import rutbook.figures.ForkFigures;
import rutbook.figures.Riding;
import rutbook.notebook.End;

/** The fork's force against travel on both sides, each by its own sheet, with its reserve. */
public record CurvePair(Figure<ForkFigures.Drawn> from, Figure<ForkFigures.Drawn> to) {

  static CurvePair of(Subject from, Subject to) {
    return new CurvePair(drawn(from), drawn(to));
  }

  private static Figure<ForkFigures.Drawn> drawn(Subject subject) {
    Riding riding =
        new Riding(subject.sag().of(End.FRONT, SagKind.RACE), Riding.NOT_NOTED.altitude());
    return ForkFigures.of(subject.sheet(), subject.setup(), riding).present().drawn();
  }

  /** Whether both sides have a curve. */
  public boolean both() {
    return from.found().isPresent() && to.found().isPresent();
  }

  /** Whether both curves are one. */
  public boolean same() {
    return from.found()
        .flatMap(one -> to.found().map(other -> one.points().equals(other.points())))
        .orElse(false);
  }
}
