package rutbook.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import rutbook.notebook.BikeId;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Notebook;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;

/**
 * All that the notebook knows of settings and complaints, as a person can check it: rule, own
 * estimate, and the motos behind it. Estimates are the censored regression's ({@link Effects}), all
 * motos together.
 *
 * @param complaints that were ever mentioned, in order
 * @param settings of the sheet in force that have doses, in its order
 * @param rows where a rule speaks or the rider's own motos do, by complaint, then setting
 */
public record Ledger(List<Complaint> complaints, List<Setting> settings, List<LedgerRow> rows) {
  public Ledger {
    complaints = List.copyOf(complaints);
    settings = List.copyOf(settings);
    rows = List.copyOf(rows);
  }

  /** Of a bike after all that its notebook holds; empty when nothing was ridden. */
  public static Ledger of(Notebook notebook, BikeId bike, RuleBook rules) {
    Timeline timeline = Timeline.of(notebook, bike);
    List<Ride> rides = Ride.of(timeline);
    if (rides.isEmpty()) {
      return new Ledger(List.of(), List.of(), List.of());
    }
    Ride last = rides.get(rides.size() - 1);
    Sheet sheet = timeline.sheetOn(last.session().day());
    List<Setting> settings =
        sheet.settings().stream().filter(each -> Doses.dose(each).isPresent()).toList();
    Setup baseline =
        timeline
            .baselineOn(last.session().day())
            .map(Entry.Baseline::setup)
            .orElse(rides.get(0).setup());
    RuleBook book = rules.with(notebook.ruleChanges());
    Trials trials = Trials.of(rides, settings);
    double[][] doses = new RideDoses(settings, baseline).of(rides);
    TreeSet<Complaint> complaints = new TreeSet<>();
    rides.forEach(ride -> complaints.addAll(ride.feel().keySet()));
    List<LedgerRow> rows = new ArrayList<>();
    for (Complaint complaint : complaints) {
      Effects effects = Effects.of(complaint, settings, doses, rides, book);
      Optional<Feel> answered = Questions.lastAnswered(complaint, rides);
      for (Setting setting : settings) {
        LedgerRow row =
            row(effects, setting, settings, trials, book.rule(complaint, setting, answered));
        if (row.byRule() != 0 || !row.trials().isEmpty()) {
          rows.add(row);
        }
      }
    }
    return new Ledger(List.copyOf(complaints), settings, rows);
  }

  private static LedgerRow row(
      Effects effects,
      Setting setting,
      List<Setting> settings,
      Trials trials,
      Optional<Rule> rule) {
    var dose = effects.perDose(setting);
    List<Trial> own = trials.of(effects.complaint(), setting.id());
    return new LedgerRow(
        effects.complaint(),
        setting,
        rule,
        effects.ruleSays(setting),
        dose.mean(),
        dose.sd(),
        effects.own(setting),
        own,
        settings.stream()
            .filter(other -> !other.equals(setting))
            .filter(other -> !isMany(own) && !isMany(trials.of(effects.complaint(), other.id())))
            .filter(other -> effects.cannotTellApart(setting, other))
            .toList());
  }

  private static boolean isMany(List<Trial> trials) {
    return trials.stream().filter(Trial::clean).count() >= LedgerRow.MANY_CLEAN;
  }

  /** The row of a complaint and a setting, if either the rules or the motos speak of it. */
  public Optional<LedgerRow> row(Complaint complaint, Setting setting) {
    return rows.stream()
        .filter(each -> each.complaint().equals(complaint))
        .filter(each -> each.setting().id().equals(setting.id()))
        .findFirst();
  }
}
