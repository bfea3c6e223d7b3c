package rutbook.json;

import java.util.Optional;
import rutbook.notebook.Entry;
import rutbook.notebook.Track;
import rutbook.reasoning.StartAtTrack;

/** What {@code next --start} answers: the ride to go by, how alike, and each setting's reading. */
public final class StartAnswer {
  private record Start(Track track, StartAtTrack found) {
    Optional<Ridden> like() {
      return found.like().map(session -> new Ridden(session, found.moto(), found.distance()));
    }
  }

  private record Ridden(Entry.Session session, int moto, double distance) {}

  private static final Facts<Ridden> RIDDEN =
      Facts.line(Ridden.class)
          .with("session", Ids.ENTRY, it -> it.session().id())
          .with("day", Texts.DAY, it -> it.session().day())
          .with("track", Ids.TRACK, it -> it.session().track())
          .with("moto", Numbers.WHOLE, it -> it.moto() + 1)
          .with("alike", Numbers.FIGURE, it -> 1 - it.distance());

  private static final Facts<StartAtTrack.From> FROM =
      Facts.of(StartAtTrack.From.class)
          .with("setting", SettingFacts.SETTING, StartAtTrack.From::setting)
          .with("reading", SettingFacts.READING, StartAtTrack.From::reading)
          .with("basis", Words.of(StartAtTrack.Basis.class), StartAtTrack.From::basis);

  private static final Facts<Start> START =
      Facts.of(Start.class)
          .with("track", Ids.TRACK, it -> it.track().id())
          .ifKnown("like", RIDDEN, Start::like)
          .list("settings", FROM, it -> it.found().settings());

  private StartAnswer() {}

  public static Reply of(Track track, StartAtTrack found) {
    return Reply.of("start", START, new Start(track, found));
  }
}
