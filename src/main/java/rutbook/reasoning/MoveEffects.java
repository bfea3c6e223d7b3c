package rutbook.reasoning;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rutbook.notebook.Feel;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Timeline;

/**
 * What is known of moving settings of a bike: the rules in force, and every change that was ridden
 * before and after on one day. Made once for a notebook, asked for each difference.
 */
public final class MoveEffects {
  private final RuleBook book;
  private final Trials trials;
  private final Set<Complaint> complaints;

  private MoveEffects(RuleBook book, Trials trials, Set<Complaint> complaints) {
    this.book = book;
    this.trials = trials;
    this.complaints = complaints;
  }

  /**
   * After all that the notebook holds.
   *
   * @param rules of the trade; the notebook's own changes to them are applied here
   */
  public static MoveEffects of(Notebook notebook, Timeline timeline, RuleBook rules) {
    List<Ride> rides = Ride.of(timeline);
    Set<Complaint> complaints = new TreeSet<>();
    rides.forEach(ride -> complaints.addAll(ride.feel().keySet()));
    List<Setting> settings =
        timeline.bike().sheets().stream().flatMap(sheet -> sheet.settings().stream()).toList();
    return new MoveEffects(
        rules.with(notebook.ruleChanges()), Trials.of(rides, settings), complaints);
  }

  /**
   * What going from one reading to another does.
   *
   * @param felt what the rider felt on either side: it is told of first
   * @return empty where nothing moves, a leg is not known, or the setting has no dose
   */
  public Optional<MoveEffect> of(Setting setting, Reading from, Reading to, Collection<Feel> felt) {
    if (kind(from, setting) && kind(to, setting)) {
      Optional<Double> before = Doses.of(setting, from);
      Optional<Double> after = Doses.of(setting, to);
      if (before.isPresent() && after.isPresent() && !before.equals(after)) {
        Set<Complaint> told = new TreeSet<>();
        felt.forEach(each -> told.add(Complaint.of(each)));
        return Optional.of(effect(setting, after.get() - before.get(), told));
      }
    }
    return Optional.empty();
  }

  /** A setting may have been in another unit on an older sheet. */
  private static boolean kind(Reading reading, Setting setting) {
    return reading.amounts().stream().allMatch(amount -> amount.dimension() == setting.dimension());
  }

  private MoveEffect effect(Setting setting, double doses, Set<Complaint> told) {
    Comparator<MoveEffect.ByRule> rules =
        Comparator.comparing((MoveEffect.ByRule each) -> !isTold(each.rule(), told))
            .thenComparing(each -> each.rule().disputed())
            .thenComparing(each -> -Math.abs(each.points()));
    Comparator<MoveEffect.ByMotos> motos =
        Comparator.comparing((MoveEffect.ByMotos each) -> each.clean() == 0)
            .thenComparing(each -> !isSpokenOf(each.complaint(), setting))
            .thenComparing(each -> !told.contains(each.complaint()))
            .thenComparing(each -> -each.clean())
            .thenComparing(each -> -Math.abs(each.better() - each.worse()))
            .thenComparing(each -> -each.mixed());
    return new MoveEffect(
        setting,
        doses,
        book.rules().stream()
            .filter(rule -> rule.role() == setting.role())
            .map(rule -> MoveEffect.ByRule.of(rule, doses))
            .sorted(rules)
            .toList(),
        complaints.stream()
            .flatMap(
                each -> MoveEffect.ByMotos.of(each, trials.of(each, setting.id()), doses).stream())
            .sorted(motos)
            .toList());
  }

  private boolean isSpokenOf(Complaint complaint, Setting setting) {
    return book.rules().stream()
        .anyMatch(rule -> rule.role() == setting.role() && rule.concerns(complaint));
  }

  private static boolean isTold(Rule rule, Set<Complaint> told) {
    return told.stream().anyMatch(rule::concerns);
  }
}
