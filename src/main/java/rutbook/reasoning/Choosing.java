package rutbook.reasoning;

import java.util.ArrayList;
import java.util.Arrays;
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

/** Which single change is expected to lower the summed severity most, its work counted. */
final class Choosing {
  static final double WORTH_A_CHANGE = 2;
  static final double LEAST_GAIN = Double.parseDouble(System.getProperty("gain", "0.25"));
  static final double REAL_COMPLAINTS = 3;
  static final double BONUS = Double.parseDouble(System.getProperty("bonus", "0"));
  private static final int MOST_SHOWN = 3;
  private static final int MOST_DOSES = Integer.getInteger("big", 4);

  private final Sheet sheet;
  private final Ride last;
  private final Setup now;
  private final Reckoning reckoning;

  Choosing(Sheet sheet, Ride last, Setup now, Reckoning reckoning) {
    this.sheet = sheet;
    this.last = last;
    this.now = now;
    this.reckoning = reckoning;
  }

  /** Summed severity expected with the setup as it is. */
  double discomfort() {
    double sum = 0;
    for (int s = 0; s < reckoning.complaints().size(); s++) {
      sum += Math.max(0, reckoning.here(s));
    }
    return sum;
  }

  /** Whether any rating of the last moto, or its expectation, is 2 or more. */
  boolean anythingBothers() {
    for (int s = 0; s < reckoning.complaints().size(); s++) {
      if (reckoning.here(s) >= WORTH_A_CHANGE - 0.5) {
        return true;
      }
    }
    return last.feel().values().stream().anyMatch(each -> each.severity() >= WORTH_A_CHANGE);
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
    Optional<Reading> from = now.reading(setting.id()).filter(Reading::isKnown);
    if (from.isEmpty()) {
      return Optional.empty();
    }
    Suggestion best = null;
    for (int doses = -MOST_DOSES; doses <= MOST_DOSES; doses++) {
      Reading to = Doses.moved(setting, from.get(), doses);
      if (doses == 0
          || to.amounts().stream()
              .anyMatch(each -> Bounds.refusal(sheet, setting, each).isPresent())
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
    int j = reckoning.settings().indexOf(setting);
    List<PlausibleBikes.Bike> bikes = reckoning.bikes().bikes();
    double gain = 0;
    double squares = 0;
    int better = 0;
    for (PlausibleBikes.Bike bike : bikes) {
      double drop = 0;
      for (int s = 0; s < bike.here().length; s++) {
        double here = bike.here()[s];
        drop += Math.max(0, here) - Math.max(0, here + doses * bike.effect()[s][j]);
      }
      gain += drop;
      squares += drop * drop;
      better += drop > 1e-9 ? 1 : 0;
    }
    int n = bikes.size();
    gain /= n;
    double sd = Math.sqrt(Math.max(0, squares / n - gain * gain));
    List<Suggestion.Shift> shifts = new ArrayList<>();
    for (int s = 0; s < reckoning.complaints().size(); s++) {
      shift(s, j, doses).ifPresent(shifts::add);
    }
    boolean near = to.amounts().stream().anyMatch(at -> Bounds.isNearStop(sheet, setting, at));
    return new Suggestion(
        setting, from, to, doses, gain + BONUS * sd, (double) better / n, shifts, near);
  }

  private Optional<Suggestion.Shift> shift(int s, int j, int doses) {
    double[] shift =
        reckoning.bikes().bikes().stream()
            .mapToDouble(each -> doses * each.effect()[s][j])
            .sorted()
            .toArray();
    double mean = Arrays.stream(shift).average().orElse(0);
    double here = reckoning.here(s);
    if (Math.abs(mean) < 0.05 || (here <= 0 && here + mean <= 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new Suggestion.Shift(
            reckoning.complaints().get(s),
            mean,
            shift[shift.length / 10],
            shift[shift.length - 1 - shift.length / 10],
            doses * reckoning.cell(s, reckoning.settings().get(j)).rule()));
  }

  /** Tried on this day and gone back from, with nothing else changed since. */
  private boolean triedAndReverted(Setting setting, Reading from, Reading target) {
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
      boolean back = held.subList(0, tried).stream().anyMatch(from::sameAs);
      if (back && held.get(tried).sameAs(target)) {
        return !otherSince;
      }
    }
    return false;
  }
}
