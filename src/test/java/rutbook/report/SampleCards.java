package rutbook.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rutbook.compare.FullComparison;
import rutbook.compare.Subject;
import rutbook.json.RulesJson;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.reasoning.MoveEffects;
import rutbook.samples.Samples;
import rutbook.units.Display;
import rutbook.words.EffectWords;
import rutbook.words.Phrases;

/** Every kind of card of the samples, for the tests of this package. */
final class SampleCards {
  /** Ends a tag, begins a script, turns the line, is no formula, and is long. */
  static final String HOSTILE =
      "</style><script>alert(1)</script>\" onload='x' \u202Eesrever\u2066 &amp; =1+1  ]]>";

  private SampleCards() {}

  static Timeline timeline(Notebook notebook) {
    return Timeline.of(notebook, notebook.bikes().get(0).id());
  }

  static Phrases phrases(Notebook notebook) {
    return Phrases.english(notebook.display());
  }

  static Cards cards(Notebook notebook, Phrases phrases) {
    return new Cards(notebook.shelf(), timeline(notebook), phrases);
  }

  static Track track(Notebook notebook, Entry.Session session) {
    return notebook.shelf().track(session.track()).orElseThrow();
  }

  static Map<String, Card> all() {
    Map<String, Card> cards = new LinkedHashMap<>();
    add(cards, "season", Samples.season(), phrases(Samples.season()));
    add(cards, "season-us", Samples.season(), Phrases.english(Display.US));
    add(cards, "split", Samples.splitFork(), phrases(Samples.splitFork()));
    add(cards, "first", Samples.firstDay(), phrases(Samples.firstDay()));
    add(cards, "hostile", hostile(), phrases(hostile()));
    return cards;
  }

  private static void add(
      Map<String, Card> cards, String name, Notebook notebook, Phrases phrases) {
    Timeline timeline = timeline(notebook);
    Cards maker = cards(notebook, phrases);
    Subject now = Subject.now(timeline);
    cards.put(name + "-now", maker.card(now));
    List<Entry.Session> sessions = timeline.sessions();
    if (sessions.isEmpty()) {
      return;
    }
    Entry.Session last = sessions.get(sessions.size() - 1);
    cards.put(name + "-session", maker.card(Subject.of(timeline, last, track(notebook, last))));
    notebook.shelf().tracks().stream()
        .flatMap(track -> Subject.best(timeline, track).stream())
        .findFirst()
        .ifPresent(best -> cards.put(name + "-setup", maker.card(best)));
    for (Track track : notebook.shelf().tracks()) {
      Subject.best(timeline, track)
          .ifPresent(
              best ->
                  cards.put(
                      name + "-best-" + track.id(),
                      compared(
                          notebook,
                          phrases,
                          FullComparison.of(notebook.shelf(), timeline, now, best))));
    }
  }

  /** With what the differences do, as the terminal and the window hand it over. */
  static Card compared(Notebook notebook, Phrases phrases, FullComparison comparison) {
    MoveEffects effects = MoveEffects.of(notebook, timeline(notebook), RulesJson.ofTheTrade());
    return cards(notebook, phrases)
        .card(comparison, new EffectWords(phrases).lines(effects, comparison.sides()));
  }

  /** The season with hostile text wherever a person can type. */
  static Notebook hostile() {
    Notebook season = Samples.season();
    Bike bike = season.bikes().get(0);
    List<Sheet> sheets = new ArrayList<>();
    for (Sheet sheet : bike.sheets()) {
      sheets.add(sheet.withSettings(sheet.settings().stream().map(SampleCards::named).toList()));
    }
    List<Track> tracks =
        season.shelf().tracks().stream()
            .map(
                track ->
                    new Track(
                        track.id(), "東京 " + HOSTILE, track.ground(), track.altitude(), HOSTILE))
            .toList();
    Shelf shelf = season.shelf();
    return season.with(
        new Shelf(
            shelf.riders(),
            List.of(new Bike(bike.id(), "Böse " + HOSTILE, sheets)),
            tracks,
            shelf.oils()));
  }

  private static Setting named(Setting setting) {
    return new Setting(
        setting.id(),
        setting.name() + " <b>&\u202E\"'",
        setting.role(),
        setting.carrier(),
        setting.scale(),
        setting.work());
  }
}
