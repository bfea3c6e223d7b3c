package rutbook.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.compare.Comparison;
import rutbook.compare.FeelRow;
import rutbook.compare.Finding;
import rutbook.compare.Group;
import rutbook.compare.SettingDifference;
import rutbook.notebook.Change;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Remark;
import rutbook.rebuild.ReturnItem;
import rutbook.rebuild.ReturnToBaseline;
import rutbook.rebuild.Step;

/** The jobs as lines in a terminal: what is on the bike, a session, a comparison, a plan. */
final class Pages {
  private static final int NAME = 30;

  private final OpenedNotebook opened;
  private final Terminal terminal;

  Pages(OpenedNotebook opened, Terminal terminal) {
    this.opened = opened;
    this.terminal = terminal;
  }

  /** What is on the bike, with the baseline beside what differs from it. */
  void onTheBike() {
    Timeline timeline = opened.timeline();
    Sheet sheet = opened.bike().latestSheet();
    Setup now = timeline.now();
    Optional<Setup> baseline = timeline.baseline().map(Entry.Baseline::setup);
    for (Group group : Group.values()) {
      List<Setting> settings =
          sheet.settings().stream().filter(each -> Group.of(each.role()) == group).toList();
      if (!settings.isEmpty()) {
        terminal.line(2, opened.comparing().group(group));
      }
      for (Setting setting : settings) {
        terminal.row(4, NAME, opened.comparing().setting(setting), reading(setting, now, baseline));
      }
    }
  }

  private String reading(Setting setting, Setup now, Optional<Setup> baseline) {
    Optional<Reading> reading = now.reading(setting.id());
    if (reading.isEmpty()) {
      return opened.say("no-reading");
    }
    String said = opened.readings().reading(setting, reading.get());
    Optional<Reading> wanted = baseline.flatMap(it -> it.reading(setting.id()));
    boolean away = wanted.isPresent() && !wanted.get().sameAs(reading.get());
    return away ? opened.say("away", said, opened.readings().reading(setting, wanted.get())) : said;
  }

  void session(Entry.Session session) {
    Sheet sheet = opened.bike().sheetOn(session.day());
    String track = opened.notebook().shelf().track(session.track()).orElseThrow().name();
    terminal.line(2, opened.say("session", track, session.day()));
    String conditions = opened.comparing().conditions(session.conditions());
    if (!conditions.isEmpty()) {
      terminal.line(4, conditions);
    }
    Setup before = session.start();
    for (int i = 0; i < session.motos().size(); i++) {
      Moto moto = session.motos().get(i);
      moto(sheet, before, moto, i + 1);
      before = before.after(session.motos().get(i).changes());
    }
  }

  private void moto(Sheet sheet, Setup before, Moto moto, int number) {
    var trust = moto.report().trust();
    terminal.line(
        4,
        trust.isPresent()
            ? opened.say("moto.trust", number, trust.getAsInt())
            : opened.say("moto", number));
    for (Change change : moto.changes()) {
      Setting setting = sheet.setting(change.setting()).orElseThrow();
      Reading from =
          before
              .reading(change.setting())
              .orElseGet(
                  () -> Reading.unknown(setting.carrier(), rutbook.notebook.WhyUnknown.NOT_NOTED));
      terminal.line(
          6,
          opened.say(
              "changed",
              opened.comparing().setting(setting),
              opened.changes().change(setting, from, change.to())));
    }
    for (Feel feel : moto.report().feel()) {
      terminal.line(
          6,
          feel.severity() == 0
              ? opened.say("feel.gone", opened.comparing().feel(feel.key()))
              : opened.say("feel", opened.comparing().feel(feel.key()), feel.severity()));
    }
    if (!moto.note().isEmpty()) {
      terminal.line(6, opened.say("note", moto.note()));
    }
  }

  /**
   * Both sides, setting by setting.
   *
   * @param effects what the differences do, in words; empty where that is not told
   */
  void comparison(Comparison comparison, Map<SettingId, List<String>> effects) {
    var words = opened.comparing();
    terminal.line(2, opened.say("from", words.choice(comparison.from().choice())));
    terminal.line(2, opened.say("to", words.choice(comparison.to().choice())));
    for (Group group : Group.values()) {
      List<SettingDifference> rows =
          comparison.settings().rows(group).stream().filter(row -> !row.isSame()).toList();
      if (!rows.isEmpty()) {
        terminal.line(2, words.group(group));
      }
      for (SettingDifference row : rows) {
        String name = words.setting(row.setting());
        for (String said : words.difference(row)) {
          terminal.row(4, NAME, name, said);
          name = "";
        }
        effects.getOrDefault(row.setting().id(), List.of()).forEach(line -> terminal.line(6, line));
      }
    }
    int same = comparison.settings().rows().size() - comparison.settings().differing().size();
    terminal.line(2, opened.say("same", same));
    comparison.sag().forEach(row -> terminal.line(2, words.sag(row)));
    sides(comparison);
    for (FeelRow row : comparison.feel()) {
      terminal.line(4, words.feel(row));
    }
  }

  private void sides(Comparison comparison) {
    String from = opened.comparing().conditions(comparison.from().conditions());
    String to = opened.comparing().conditions(comparison.to().conditions());
    if (!from.isEmpty() && !to.isEmpty()) {
      terminal.line(2, opened.say("ground", from, to));
    }
    if (!comparison.feel().isEmpty()) {
      terminal.line(2, opened.say("feel.sides"));
    }
  }

  /** What wants attention. */
  void check(List<Finding> findings) {
    if (findings.isEmpty()) {
      terminal.line(opened.say("all-well"));
    }
    for (Finding finding : findings) {
      terminal.line(opened.say("item", opened.comparing().finding(finding)));
    }
  }

  /** The steps in order with their values and cautions. */
  void plan(Plan plan) {
    int number = 0;
    for (Step step : plan.steps()) {
      number++;
      terminal.row(0, 4, number + ".", opened.planning().title(step));
      for (String value : opened.planning().values(step)) {
        terminal.line(6, value);
      }
      for (var caution : step.cautions()) {
        terminal.line(6, opened.say("caution", opened.planning().caution(caution)));
      }
    }
    terminal.line(opened.say("time", number, plan.minutesLeft()));
    beforeTheRide(plan);
  }

  /** What new oil and parts do: a sense with its figure. */
  void beforeTheRide(Plan plan) {
    if (!plan.remarks().isEmpty()) {
      terminal.blank();
      terminal.line(opened.say("before-ride"));
    }
    for (Remark remark : plan.remarks()) {
      terminal.row(2, 2, "-", opened.remarks().remark(plan.sheet(), remark));
    }
  }

  /** The way back in order. */
  void back(ReturnToBaseline back) {
    int number = 0;
    for (ReturnItem item : back.items()) {
      number++;
      terminal.row(2, 4, number + ".", opened.planning().back(item));
      if (item.action() != ReturnItem.Action.RE_REFERENCE) {
        item.what()
            .shortfalls()
            .forEach(shortfall -> terminal.line(6, opened.planning().shortfall(shortfall)));
        item.what()
            .remarks()
            .forEach(
                remark ->
                    terminal.line(6, opened.remarks().remark(opened.bike().latestSheet(), remark)));
      }
    }
    if (number == 0) {
      terminal.line(2, opened.say("at-baseline"));
    }
  }
}
