package rutbook.ui.log;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Shelf;
import rutbook.notebook.Track;
import rutbook.words.SettingWords;
import rutbook.words.WindowWords;

/** What a row of the Log says of an entry, and the text it can be found by. */
final class EntryWords {
  private final WindowWords words;
  private final SettingWords settingWords;
  private final Map<EntryId, Found> index = new HashMap<>();

  /** The text of an entry, good for as long as entry and shelf are the same. */
  private record Found(Entry entry, Shelf shelf, String text) {}

  EntryWords(WindowWords words, SettingWords settingWords) {
    this.words = words;
    this.settingWords = settingWords;
  }

  String kind(Entry entry) {
    return words.text("kind." + entry.getClass().getSimpleName());
  }

  /** The first line of a row: the track of a session, or what it is. */
  String title(Shelf shelf, Entry entry) {
    if (entry instanceof Entry.Session session) {
      return shelf.track(session.track()).map(Track::name).orElse(session.track().text());
    }
    if (entry instanceof Entry.Event event) {
      return words.label(event.kind())
          + event.fault().map(fault -> ", " + words.name(fault)).orElse("");
    }
    return kind(entry);
  }

  /** What happened, on one line. */
  String line(Shelf shelf, Entry entry) {
    String said = said(shelf, entry);
    String note = entry.head().note().strip().replaceAll("\\s+", " ");
    return said.isEmpty() || note.isEmpty() ? said + note : said + " · " + note;
  }

  private String said(Shelf shelf, Entry entry) {
    if (entry instanceof Entry.Session session) {
      return session(session);
    }
    if (entry instanceof Entry.Adjusted adjusted) {
      return adjusted.changes().stream()
          .map(
              change ->
                  setting(shelf, entry, change.setting())
                      .map(
                          setting ->
                              setting.name() + " → " + settingWords.reading(setting, change.to()))
                      .orElse(change.setting().text()))
          .collect(Collectors.joining(", "));
    }
    if (entry instanceof Entry.SagMeasured sag) {
      String missing = words.text("log.missing");
      return words.text(
          "log.sag",
          words.name(sag.end()),
          sag.race().map(settingWords::amount).orElse(missing),
          sag.free().map(settingWords::amount).orElse(missing));
    }
    if (entry instanceof Entry.RebuildJob rebuild) {
      return words.text(
          "log.rebuild", words.name(rebuild.job().scope()), words.name(rebuild.outcome()));
    }
    return other(shelf, entry);
  }

  private String other(Shelf shelf, Entry entry) {
    if (entry instanceof Entry.Baseline baseline) {
      return baseline.reason();
    }
    if (entry instanceof Entry.MeterChange change) {
      return words.text(
          "log.meter",
          settingWords.amount(change.oldReads()),
          settingWords.amount(change.newReads()));
    }
    if (entry instanceof Entry.Event event) {
      return event.what();
    }
    if (entry instanceof Entry.Serviced serviced) {
      return serviced.items().stream()
          .map(
              id ->
                  bike(shelf, entry).stream()
                      .flatMap(bike -> bike.latestSheet().services().stream())
                      .filter(item -> item.id().equals(id))
                      .findFirst()
                      .map(item -> item.name())
                      .orElse(id.text()))
          .collect(Collectors.joining(", "));
    }
    if (entry instanceof Entry.GateDismissed dismissed) {
      return words.label(dismissed.gate()) + ": " + dismissed.reason();
    }
    return entry instanceof Entry.Advice advice
        ? words.text("log.advice", advice.proposals().size())
        : "";
  }

  private String session(Entry.Session session) {
    int changes = session.motos().stream().mapToInt(moto -> moto.changes().size()).sum();
    String text = words.text("log.session", session.motos().size());
    if (!session.motos().isEmpty()) {
      text += " · " + words.text("log.session.changes", changes);
    }
    OptionalLong best =
        session.motos().stream()
            .flatMap(moto -> moto.report().laps().stream())
            .filter(Lap::counts)
            .mapToLong(Lap::millis)
            .min();
    return best.isPresent()
        ? text + " · " + words.text("log.session.best", words.lap(best.getAsLong()))
        : text;
  }

  /** All that can be found in an entry, in lower case; kept while entry and shelf stay the same. */
  String searched(Shelf shelf, Entry entry) {
    Found found = index.get(entry.id());
    if (found == null || found.entry() != entry || found.shelf() != shelf) {
      found = new Found(entry, shelf, text(shelf, entry).toLowerCase(Locale.ROOT));
      index.put(entry.id(), found);
    }
    return found.text();
  }

  private String text(Shelf shelf, Entry entry) {
    StringBuilder text = new StringBuilder();
    List<String> parts =
        List.of(
            kind(entry),
            title(shelf, entry),
            line(shelf, entry),
            bike(shelf, entry).map(Bike::name).orElse(""),
            entry.day().toString());
    parts.forEach(part -> text.append(part).append('\n'));
    if (entry instanceof Entry.Session session) {
      for (Moto moto : session.motos()) {
        text.append(moto.note()).append('\n');
        for (Feel feel : moto.report().feel()) {
          text.append(words.name(feel.end())).append(' ');
          text.append(words.name(feel.symptom())).append(' ');
          text.append(words.name(feel.section())).append('\n');
        }
        for (var change : moto.changes()) {
          setting(shelf, entry, change.setting()).ifPresent(each -> text.append(each.name()));
          text.append(' ').append(change.why()).append('\n');
        }
      }
    }
    return text.toString();
  }

  private static Optional<Bike> bike(Shelf shelf, Entry entry) {
    return shelf.bike(entry.bike());
  }

  private static Optional<Setting> setting(Shelf shelf, Entry entry, SettingId id) {
    return bike(shelf, entry).flatMap(bike -> bike.sheetOn(entry.day()).setting(id));
  }
}
