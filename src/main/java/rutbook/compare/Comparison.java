package rutbook.compare;

import java.util.List;
import java.util.stream.Stream;
import rutbook.notebook.Feel;

/** Two subjects side by side: settings, sag and feel; the conditions are the subjects' own. */
public record Comparison(
    Subject from, Subject to, SetupComparison settings, List<SagRow> sag, List<FeelRow> feel) {

  public Comparison {
    sag = List.copyOf(sag);
    feel = List.copyOf(feel);
  }

  public static Comparison of(Subject from, Subject to) {
    return new Comparison(
        from,
        to,
        SetupComparison.of(from.sheet(), from.setup(), to.sheet(), to.setup()),
        SagRow.of(from.sag(), to.sag(), to.sheet().parts().sag()),
        FeelRow.of(from.feel(), to.feel()));
  }

  /** What was felt on either side. */
  public List<Feel> felt() {
    return Stream.concat(from.feel().stream(), to.feel().stream()).toList();
  }

  public Comparison swapped() {
    return of(to, from);
  }
}
