package rutbook.app;

import rutbook.compare.Choice;
import rutbook.compare.Subject;
import rutbook.notebook.Entry;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.report.Card;
import rutbook.report.Cards;
import rutbook.share.ChosenSetup;
import rutbook.share.SetupFile;
import rutbook.words.Phrases;

/** The card of the setup that a file asks about, made of the file alone: it tells no more. */
final class SetupFileCard {
  private SetupFileCard() {}

  static Card of(SetupFile file, Phrases phrases) {
    Notebook notebook = file.asNotebook();
    Timeline timeline = Timeline.of(notebook, file.excerpt().bike().id());
    return new Cards(notebook.shelf(), timeline, phrases.in(notebook.display()))
        .card(subject(file, timeline));
  }

  private static Subject subject(SetupFile file, Timeline timeline) {
    ChosenSetup asked = file.asked();
    if (asked.session().isEmpty()) {
      Subject now = Subject.now(timeline);
      return new Subject(
          new Choice.Now(),
          asked.day(),
          file.sheet(),
          asked.setup(),
          now.sag(),
          now.conditions(),
          now.feel(),
          now.trust());
    }
    Entry.Session session =
        file.excerpt().sessions().stream()
            .filter(each -> each.id().equals(asked.session().get()))
            .findFirst()
            .orElseThrow();
    Track track = file.excerpt().track(session).orElseThrow();
    return asked.moto().isEmpty()
        ? Subject.of(timeline, session, track)
        : Subject.of(timeline, session, track, place(session, asked.moto().get()));
  }

  private static int place(Entry.Session session, MotoId moto) {
    for (int i = 0; i < session.motos().size(); i++) {
      if (session.motos().get(i).id().equals(moto)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no moto " + moto);
  }
}
