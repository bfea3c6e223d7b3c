package rutbook.json;

import java.util.List;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookId;
import rutbook.notebook.Oil;
import rutbook.notebook.Rider;
import rutbook.notebook.RuleChange;
import rutbook.notebook.Shelf;
import rutbook.notebook.Track;
import rutbook.units.Display;

/** A whole notebook, with what it is and in which format at its head. */
final class NotebookShape extends RecordShape<Notebook> {
  static final String WHAT = "rutbook";
  static final String FORMAT = "format";
  static final String NOTEBOOK = "notebook";

  private final Field<String> what = required(WHAT, new Constant(NOTEBOOK), notebook -> NOTEBOOK);
  private final Field<Integer> format =
      required(FORMAT, Numbers.WHOLE, notebook -> NotebookJson.FORMAT);
  private final Field<NotebookId> id = required("id", Ids.NOTEBOOK, Notebook::id);
  private final Field<Display> units = required("units", new DisplayShape(), Notebook::display);
  private final Field<List<Rider>> riders =
      list("riders", new RiderShape(), each -> each.shelf().riders());
  private final Field<List<Bike>> bikes =
      list("bikes", new BikeShape(), each -> each.shelf().bikes());
  private final Field<List<Track>> tracks =
      list("tracks", new TrackShape(), each -> each.shelf().tracks());
  private final Field<List<Oil>> oils = list("oils", new OilShape(), each -> each.shelf().oils());
  private final Field<List<Entry>> entries = list("entries", new EntriesShape(), Notebook::entries);
  private final Field<List<RuleChange>> ruleChanges =
      list("ruleChanges", new RuleChangeShape(), Notebook::ruleChanges);

  @Override
  Notebook make(Got got) {
    Shelf shelf = new Shelf(got.get(riders), got.get(bikes), got.get(tracks), got.get(oils));
    return Notebook.of(got.get(id), shelf, got.get(entries), got.get(ruleChanges), got.get(units));
  }
}
