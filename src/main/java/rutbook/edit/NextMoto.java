package rutbook.edit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.BikeId;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Report;
import rutbook.notebook.Timeline;

/** The moto that is ridden next on a day: the last one when nothing was said of it yet, or new. */
public record NextMoto(EntryId session, MotoId moto) {

  /** Empty when the bike has no session on that day. */
  public static Optional<NextMoto> of(Notebook notebook, BikeId bike, LocalDate today, Ids ids) {
    return Timeline.of(notebook, bike)
        .latest(Entry.Session.class)
        .filter(session -> session.day().equals(today))
        .map(session -> new NextMoto(session.id(), moto(session.motos(), ids)));
  }

  private static MotoId moto(List<Moto> motos, Ids ids) {
    if (!motos.isEmpty()) {
      Moto last = motos.get(motos.size() - 1);
      if (last.report().equals(Report.EMPTY)) {
        return last.id();
      }
    }
    return new MotoId(ids.next());
  }
}
