package rutbook.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rutbook.compare.Group;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.How;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.notebook.WhyUnknown;

/** What {@code log} answers: what is on the bike, and every session with its motos. */
public final class LogAnswer {
  /** A change with what the setting read before it. */
  private record Moved(Setting setting, Reading from, Change change) {}

  private record Ridden(Moto moto, int number, List<Moved> moved) {}

  private record Day(Entry.Session session, Track track, List<Ridden> motos) {}

  private record Log(List<SettingFacts.Beside> now, List<Day> days) {}

  private static final Facts<Moved> MOVED =
      Facts.line(Moved.class)
          .with("setting", Ids.SETTING, moved -> moved.setting().id())
          .with("from", SettingFacts.READING, Moved::from)
          .with("to", SettingFacts.READING, moved -> moved.change().to())
          .note("why", moved -> moved.change().why());

  private static final Facts<Ridden> MOTO =
      Facts.of(Ridden.class)
          .with("id", Ids.MOTO, ridden -> ridden.moto().id())
          .with("moto", Numbers.WHOLE, Ridden::number)
          .with("kind", Words.of(MotoKind.class), ridden -> ridden.moto().kind())
          .list("changed", MOVED, Ridden::moved)
          .ifKnown("trust", Numbers.WHOLE, it -> RideFacts.whole(it.moto().report().trust()))
          .list("feel", new FeelShape(), ridden -> ridden.moto().report().feel())
          .list("laps", RideFacts.LAP, ridden -> ridden.moto().report().laps())
          .with("travel", RideFacts.TRAVEL, ridden -> ridden.moto().report().travel())
          .flag("doubtful", ridden -> ridden.moto().report().doubtful())
          .ifKnown("conditions", RideFacts.CONDITIONS, ridden -> ridden.moto().conditions())
          .note("note", ridden -> ridden.moto().note());

  private static final Facts<Placed> PLACED =
      Facts.line(Placed.class)
          .with("setting", Ids.SETTING, Placed::setting)
          .with("reading", SettingFacts.READING, Placed::reading)
          .with("how", Words.of(How.class), Placed::how);

  private static final Facts<Day> SESSION =
      Facts.of(Day.class)
          .with("id", Ids.ENTRY, day -> day.session().id())
          .with("day", Texts.DAY, day -> day.session().day())
          .with("track", Texts.TEXT, day -> day.track().name())
          .with("conditions", RideFacts.CONDITIONS, day -> day.session().conditions())
          .list("start", PLACED, day -> day.session().start().placed())
          .list("motos", MOTO, Day::motos)
          .note("note", day -> day.session().head().note());

  private static final Facts<Log> LOG =
      Facts.of(Log.class)
          .list("now", SettingFacts.BESIDE, Log::now)
          .list("sessions", SESSION, Log::days);

  private LogAnswer() {}

  public static Reply of(Notebook notebook, Timeline timeline) {
    List<Day> days =
        timeline.sessions().stream()
            .map(session -> day(notebook, timeline.sheetOn(session.day()), session))
            .toList();
    return Reply.of("log", LOG, new Log(now(timeline), days));
  }

  private static List<SettingFacts.Beside> now(Timeline timeline) {
    Setup now = timeline.now();
    Optional<Setup> baseline = timeline.baseline().map(Entry.Baseline::setup);
    return timeline.bike().latestSheet().settings().stream()
        .sorted(Comparator.comparing(setting -> Group.of(setting.role())))
        .map(
            setting ->
                new SettingFacts.Beside(
                    setting,
                    now.reading(setting.id()),
                    baseline.flatMap(it -> it.reading(setting.id()))))
        .toList();
  }

  private static Day day(Notebook notebook, Sheet sheet, Entry.Session session) {
    List<Ridden> motos = new ArrayList<>();
    Setup before = session.start();
    for (int i = 0; i < session.motos().size(); i++) {
      Moto moto = session.motos().get(i);
      motos.add(new Ridden(moto, i + 1, moved(sheet, before, moto)));
      before = before.after(session.motos().get(i).changes());
    }
    return new Day(session, notebook.shelf().track(session.track()).orElseThrow(), motos);
  }

  private static List<Moved> moved(Sheet sheet, Setup before, Moto moto) {
    List<Moved> moved = new ArrayList<>();
    for (Change change : moto.changes()) {
      Setting setting = sheet.setting(change.setting()).orElseThrow();
      Reading from =
          before
              .reading(setting.id())
              .orElseGet(() -> Reading.unknown(setting.carrier(), WhyUnknown.NOT_NOTED));
      moved.add(new Moved(setting, from, change));
    }
    return moved;
  }
}
