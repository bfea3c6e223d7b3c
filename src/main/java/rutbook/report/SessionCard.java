package rutbook.report;

import java.util.ArrayList;
import java.util.List;
import rutbook.compare.Choice;
import rutbook.compare.Subject;
import rutbook.drawing.MarkGlyph;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.WhyUnknown;
import rutbook.words.ChangeWords;

/** The card of a session: its motos with what was changed before each, and how it was left. */
final class SessionCard {
  private final CardOf of;
  private final ChangeWords changes;

  SessionCard(CardOf of) {
    this.of = of;
    this.changes = new ChangeWords(of.phrases()).spelled();
  }

  Card card(Subject subject, Choice.OfSession choice) {
    Entry.Session session = choice.session();
    List<Card.Block> blocks = new ArrayList<>();
    if (!session.motos().isEmpty()) {
      blocks.add(motos(subject.sheet(), session));
    }
    blocks.add(
        of.legend(of.words().say("mark.READING.left"), MarkGlyph.PREVIOUS, MarkGlyph.BASELINE));
    blocks.addAll(new SetupCard(of).settings(subject, java.util.Optional.of(session.start())));
    blocks.add(new Card.Lines(of.words().say("sag"), of.sag(subject)));
    List<String> notes = notes(session);
    if (!notes.isEmpty()) {
      blocks.add(new Card.Lines(of.words().say("notes"), notes));
    }
    List<String> under = new ArrayList<>(List.of(of.subject(subject)));
    of.rider(session).ifPresent(under::add);
    return new Card(of.bike(), under, blocks, of.cautions(subject.sheet()));
  }

  private Card.Table motos(Sheet sheet, Entry.Session session) {
    List<List<String>> rows = new ArrayList<>();
    Setup before = session.start();
    for (int i = 0; i < session.motos().size(); i++) {
      Moto moto = session.motos().get(i);
      rows.add(
          List.of(
              String.valueOf(i + 1),
              changed(sheet, before, moto),
              feel(moto),
              trust(moto),
              of.words().laps(moto.report().laps())));
      before = before.after(session.motos().get(i).changes());
    }
    return new Card.Table(
        of.words().say("motos"),
        List.of(
            of.words().say("moto"),
            of.words().say("moto.changed"),
            of.words().say("moto.feel"),
            of.words().say("moto.trust"),
            of.words().say("moto.laps")),
        rows);
  }

  private String changed(Sheet sheet, Setup before, Moto moto) {
    List<String> said = new ArrayList<>();
    for (Change change : moto.changes()) {
      Setting setting = sheet.setting(change.setting()).orElseThrow();
      Reading from =
          before
              .reading(change.setting())
              .orElseGet(() -> Reading.unknown(setting.carrier(), WhyUnknown.NOT_NOTED));
      said.add(of.comparing().setting(setting) + " " + changes.change(setting, from, change.to()));
    }
    return String.join("; ", said);
  }

  private String feel(Moto moto) {
    List<String> said = new ArrayList<>();
    for (Feel feel : moto.report().feel()) {
      if (feel.severity() > 0) {
        said.add(of.words().say("feel.item", of.comparing().feel(feel.key()), feel.severity()));
      }
    }
    return String.join("; ", said);
  }

  private static String trust(Moto moto) {
    return moto.report().trust().isPresent()
        ? String.valueOf(moto.report().trust().getAsInt())
        : "";
  }

  private List<String> notes(Entry.Session session) {
    List<String> notes = new ArrayList<>();
    if (!session.head().note().isEmpty()) {
      notes.add(of.phrases().safe(session.head().note()));
    }
    for (int i = 0; i < session.motos().size(); i++) {
      String note = session.motos().get(i).note();
      if (!note.isEmpty()) {
        notes.add((i + 1) + ": " + of.phrases().safe(note));
      }
    }
    return notes;
  }
}
