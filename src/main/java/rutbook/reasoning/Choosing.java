package rutbook.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Bounds;
import rutbook.notebook.Moto;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Work;
import rutbook.stats.Gaussian;
import rutbook.stats.Normal;

/** Which single change is expected to lower the summed severity most, its work counted. */
final class Choosing {
  static final double WORTH_A_CHANGE = 2;
  static final double LEAST_GAIN = 0.25;
  static final double REAL_COMPLAINTS = 3;
  private static final int MOST_SHOWN = 3;
  private static final int[] DOSES = {-2, -1, 1, 2};

  private final Sheet sheet;
  private final Ride last;
  private final List<Effects> effects;

  Choosing(Sheet sheet, Ride last, List<Effects> effects) {
    this.sheet = sheet;
    this.last = last;
    this.effects = effects;
  }

  /** Summed severity expected with the setup as it is. */
  double discomfort() {
    return effects.stream().mapToDouble(each -> Math.max(0, each.here())).sum();
  }

  /** Whether any rating of the last moto, or its expectation, is 2 or more. */
  boolean anythingBothers() {
    return effects.stream().anyMatch(each -> each.here() >= WORTH_A_CHANGE - 0.5)
        || last.feel().values().stream().anyMatch(each -> each.severity() >= WORTH_A_CHANGE);
  }

  /** The best change of each setting, at most three, the greatest gain first. */
  List<Suggestion> best() {
    List<Suggestion> all = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      if (Doses.dose(setting).isPresent() && setting.work() != Work.SHOP) {
        bestOf(setting).ifPresent(all::add);
      }
    }
    all.sort(
        Comparator.comparingDouble((Suggestion each) -> -net(each))
            .thenComparing(each -> each.setting().id().text()));
    return all.subList(0, Math.min(MOST_SHOWN, all.size()));
  }

  private Optional<Suggestion> bestOf(Setting setting) {
    Optional<Reading> from = last.setup().reading(setting.id()).filter(Reading::isKnown);
    if (from.isEmpty()) {
      return Optional.empty();
    }
    Suggestion best = null;
    for (int doses : DOSES) {
      Reading to = Doses.moved(setting, from.get(), doses);
      if (to.amounts().stream().anyMatch(each -> Bounds.refusal(sheet, setting, each).isPresent())
          || triedAndReverted(setting, from.get(), to)) {
        continue;
      }
      Suggestion next = suggestion(setting, from.get(), to, doses);
      if (net(next) >= LEAST_GAIN && (best == null || net(next) > net(best))) {
        best = next;
      }
    }
    return Optional.ofNullable(best);
  }

  private static double net(Suggestion suggestion) {
    double work =
        switch (suggestion.setting().work()) {
          case TRACKSIDE -> 0;
          case PADDOCK -> 0.1;
          case BENCH, SHOP -> 0.3;
        };
    return suggestion.gain() - work;
  }

  private Suggestion suggestion(Setting setting, Reading from, Reading to, int doses) {
    double gain = 0;
    double mean = 0;
    double variance = 0;
    List<Suggestion.Shift> shifts = new ArrayList<>();
    for (Effects each : effects) {
      Gaussian.Estimate dose = each.perDose(setting);
      double shift = doses * dose.mean();
      double sd = Math.abs(doses) * dose.sd();
      double after = each.here() + shift;
      gain += Math.max(0, each.here()) - Math.max(0, after);
      if (each.here() > 0 || after > 0) {
        mean += Math.max(0, after) - Math.max(0, each.here());
        variance += sd * sd;
        shifts.add(
            new Suggestion.Shift(
                each.complaint(),
                shift,
                shift - 1.2816 * sd,
                shift + 1.2816 * sd,
                doses * each.ruleSays(setting)));
      }
    }
    double chance = variance > 0 ? Normal.cumulative(-mean / Math.sqrt(variance)) : 0.5;
    boolean near = to.amounts().stream().anyMatch(at -> Bounds.isNearStop(sheet, setting, at));
    return new Suggestion(setting, from, to, doses, gain, chance, shifts, near);
  }

  /** Tried on this day and gone back from, with nothing else changed since. */
  private boolean triedAndReverted(Setting setting, Reading now, Reading target) {
    Setup setup = last.session().start();
    List<Reading> held = new ArrayList<>();
    setup.reading(setting.id()).ifPresent(held::add);
    boolean otherSince = false;
    for (Moto moto : last.session().motos()) {
      Setup next = setup.after(moto.changes());
      Optional<Reading> here = next.reading(setting.id());
      boolean moved =
          here.isPresent() && (held.isEmpty() || !held.get(held.size() - 1).sameAs(here.get()));
      if (moved) {
        held.add(here.get());
        otherSince = false;
      }
      otherSince |= moto.changes().stream().anyMatch(c -> !c.setting().equals(setting.id()));
      setup = next;
    }
    for (int tried = 1; tried < held.size() - 1; tried++) {
      boolean back = held.subList(0, tried).stream().anyMatch(now::sameAs);
      if (back && held.get(tried).sameAs(target)) {
        return !otherSince;
      }
    }
    return false;
  }
}
