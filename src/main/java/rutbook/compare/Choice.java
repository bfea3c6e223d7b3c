package rutbook.compare;

import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
import rutbook.notebook.Track;

/** What was chosen to be compared. */
public sealed interface Choice {

  /** What is on the bike after all that is noted. */
  record Now() implements Choice {}

  record OfBaseline(Entry.Baseline baseline) implements Choice {}

  /** A session as it was left. */
  record OfSession(Entry.Session session, Track track) implements Choice {}

  /**
   * @param moto counted from 0
   */
  record OfMoto(Entry.Session session, Track track, int moto) implements Choice {
    public Moto ridden() {
      return session.motos().get(moto);
    }
  }

  /** The moto at a track that went best by trust and feel, counted from 0. */
  record BestOf(Entry.Session session, Track track, int moto) implements Choice {
    public Moto ridden() {
      return session.motos().get(moto);
    }
  }

  /** What to start with at a track. */
  record StartAt(Track track) implements Choice {}

  /** What is on the bike now with the proposals of an advice made. */
  record OfAdvice(Entry.Advice advice) implements Choice {}

  /** A setup as it was handed over. */
  record OfHandedOver(Entry.HandedOver handedOver) implements Choice {}
}
