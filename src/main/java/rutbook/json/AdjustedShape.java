package rutbook.json;

import java.util.List;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;

/** Changes made between sessions. */
final class AdjustedShape extends EntryShape<Entry.Adjusted> {
  private final Field<List<Change>> changes =
      list("changes", new ChangeShape(), Entry.Adjusted::changes);

  AdjustedShape() {
    super("adjusted");
  }

  @Override
  Entry.Adjusted make(Got got) {
    return new Entry.Adjusted(head(got), got.get(changes));
  }
}
