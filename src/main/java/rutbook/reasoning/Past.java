package rutbook.reasoning;

import java.util.List;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;

/** A notebook as it was after some moto, to ask what would have been suggested then. */
public final class Past {
  private Past() {}

  /**
   * Without what came later for the bike of the session. Advice and hand-overs are left out, since
   * they may name what came later and the reasoning does not read them.
   *
   * @param motos of the session to keep, at most all
   */
  public static Notebook upTo(Notebook notebook, Entry.Session session, int motos) {
    List<Entry> kept = entriesBefore(notebook, session);
    boolean whole = motos >= session.motos().size();
    kept.add(
        whole
            ? session
            : session
                .withMotos(session.motos().subList(0, motos))
                .withCheck(java.util.Optional.empty()));
    return of(notebook, kept);
  }

  /** Without an entry and what came later for its bike; advice and hand-overs left out as above. */
  public static Notebook before(Notebook notebook, Entry entry) {
    return of(notebook, entriesBefore(notebook, entry));
  }

  private static List<Entry> entriesBefore(Notebook notebook, Entry entry) {
    List<Entry> ofBike = Timeline.of(notebook, entry.bike()).entries();
    return ofBike.subList(0, ofBike.indexOf(entry)).stream()
        .filter(each -> !(each instanceof Entry.Advice) && !(each instanceof Entry.HandedOver))
        .collect(java.util.stream.Collectors.toCollection(java.util.ArrayList::new));
  }

  private static Notebook of(Notebook notebook, List<Entry> entries) {
    return Notebook.of(
        notebook.id(), notebook.shelf(), entries, notebook.ruleChanges(), notebook.display());
  }
}
