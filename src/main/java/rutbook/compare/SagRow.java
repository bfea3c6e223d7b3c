package rutbook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.End;
import rutbook.notebook.Range;
import rutbook.notebook.SagWindows;
import rutbook.units.Amount;

/** One sag of one end on both sides, with the window of the second side's sheet. */
public record SagRow(
    End end, SagKind kind, Optional<Amount> from, Optional<Amount> to, Optional<Range> window) {

  static List<SagRow> of(SagSeen from, SagSeen to, SagWindows windows) {
    List<SagRow> rows = new ArrayList<>();
    for (End end : List.of(End.FRONT, End.REAR)) {
      for (SagKind kind : SagKind.values()) {
        Optional<Amount> before = from.of(end, kind);
        Optional<Amount> after = to.of(end, kind);
        if (before.isPresent() || after.isPresent()) {
          rows.add(new SagRow(end, kind, before, after, kind.window(windows, end)));
        }
      }
    }
    return rows;
  }

  /** Whether both are known and the same quantity. */
  public boolean isSame() {
    return from.isPresent() && to.isPresent() && from.get().sameQuantity(to.get());
  }

  /** After minus before, when both are known. */
  public Optional<Amount> by() {
    return from.isPresent() && to.isPresent()
        ? Optional.of(to.get().minus(from.get()))
        : Optional.empty();
  }
}
