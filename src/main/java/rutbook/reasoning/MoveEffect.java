package rutbook.reasoning;

import java.util.List;
import java.util.Optional;
import rutbook.notebook.Setting;

/**
 * What moving one setting from a reading to another does: by the rules of the trade alone, and by
 * the rider's own motos alone. The two are kept apart, so that nobody can mix them.
 *
 * @param doses how far, towards more of the setting; never 0
 * @param trade every rule that speaks of it, what the rider feels and what it moves most first
 * @param own complaints that were rated before and after the setting was moved, best known first
 */
public record MoveEffect(Setting setting, double doses, List<ByRule> trade, List<ByMotos> own) {
  private static final double MOST = 5;

  public MoveEffect {
    trade = List.copyOf(trade);
    own = List.copyOf(own);
  }

  /**
   * What a rule expects.
   *
   * @param points of severity that the complaint gains, below 0 that it loses, -5 to 5
   */
  public record ByRule(Rule rule, double points) {
    static ByRule of(Rule rule, double doses) {
      return new ByRule(rule, Math.max(-MOST, Math.min(MOST, rule.size() * doses)));
    }
  }

  /**
   * What motos showed, each change taken as this way: going back and getting worse counts as
   * better.
   *
   * @param better clean comparisons after which the complaint was less
   * @param same after which it was as before
   * @param worse after which it was more
   * @param mixed comparisons in which something else was changed too: they tell nothing alone
   */
  public record ByMotos(Complaint complaint, int better, int same, int worse, int mixed) {
    public int clean() {
      return better + same + worse;
    }

    /** Empty without a trial. */
    static Optional<ByMotos> of(Complaint complaint, List<Trial> trials, double doses) {
      int[] clean = new int[3];
      int mixed = 0;
      for (Trial trial : trials) {
        if (!trial.clean()) {
          mixed++;
          continue;
        }
        double way = Math.signum(trial.doses()) * Math.signum(doses);
        clean[1 + (int) Math.signum(way * (trial.severityAfter() - trial.severityBefore()))]++;
      }
      return trials.isEmpty()
          ? Optional.empty()
          : Optional.of(new ByMotos(complaint, clean[0], clean[1], clean[2], mixed));
    }
  }
}
