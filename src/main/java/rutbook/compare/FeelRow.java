package rutbook.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import rutbook.notebook.End;
import rutbook.notebook.Feel;

/** One feel on both sides: 0 is looked for and not there, empty is not mentioned. */
public record FeelRow(Feel.Key key, OptionalInt from, OptionalInt to) {
  private static final Comparator<FeelRow> ORDER =
      Comparator.comparing((FeelRow row) -> row.key().section())
          .thenComparing((FeelRow row) -> row.key().end())
          .thenComparing(row -> row.key().symptom());

  static List<FeelRow> of(List<Feel> from, List<Feel> to) {
    List<FeelRow> rows = new ArrayList<>();
    for (Feel feel : from) {
      rows.add(new FeelRow(feel.key(), OptionalInt.of(feel.severity()), severity(to, feel.key())));
    }
    for (Feel feel : to) {
      if (severity(from, feel.key()).isEmpty()) {
        rows.add(new FeelRow(feel.key(), OptionalInt.empty(), OptionalInt.of(feel.severity())));
      }
    }
    rows.sort(ORDER);
    return rows;
  }

  private static OptionalInt severity(List<Feel> feels, Feel.Key key) {
    return feels.stream()
        .filter(feel -> feel.key().equals(key))
        .mapToInt(Feel::severity)
        .findFirst();
  }

  public End end() {
    return key.end();
  }
}
