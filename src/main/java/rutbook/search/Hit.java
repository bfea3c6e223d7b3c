package rutbook.search;

import java.time.LocalDate;
import java.util.List;
import rutbook.notebook.EntryId;

/**
 * An entry of some notebook that was found.
 *
 * @param notebook the name by which the shelf knows it
 * @param rider who rode; of an entry that is no session all riders of the notebook
 * @param track where; empty for an entry that is no session
 * @param written what was written in it: of a hit the texts with a word that was looked for
 */
public record Hit(
    String notebook,
    EntryId entry,
    LocalDate day,
    String rider,
    String bike,
    String track,
    List<String> written) {
  public Hit {
    written = List.copyOf(written);
  }

  Hit withOnly(Query query) {
    List<String> touched = written.stream().filter(text -> query.touches(Folded.of(text))).toList();
    return new Hit(notebook, entry, day, rider, bike, track, touched);
  }
}
