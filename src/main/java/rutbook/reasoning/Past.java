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
    List<Entry> ofBike = Timeline.of(notebook, session.bike()).entries();
    int last = ofBike.indexOf(session);
    List<Entry> kept =
        ofBike.subList(0, last).stream()
            .filter(each -> !(each instanceof Entry.Advice) && !(each instanceof Entry.HandedOver))
            .collect(java.util.stream.Collectors.toCollection(java.util.ArrayList::new));
    boolean whole = motos >= session.motos().size();
    kept.add(
        whole
            ? session
            : session
                .withMotos(session.motos().subList(0, motos))
                .withCheck(java.util.Optional.empty()));
    return Notebook.of(
        notebook.id(), notebook.shelf(), kept, notebook.ruleChanges(), notebook.display());
  }
}
