package rutbook.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Bounds;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Work;
import rutbook.units.Dimension;

/** Which single change is expected to lower the summed severity most, its work counted. */
final class Choosing {
  static final double WORTH_A_CHANGE = 2;

  /** Nobody feels less. */
  static final double LEAST_GAIN = 0.25;

  /** What a rider may still want who was told that nothing has to be changed. */
  static final double FINER_GAIN = 0.1;

  static final double REAL_COMPLAINTS = 3;
  static final int MOST_SHOWN = 3;
  private static final int MOST_CLICKS = 4;
  private static final int MOST_DOSES = 3;
  private static final int TEST_DOSES = 2;

  private final Sheet sheet;
  private final Ride last;
  private final Setup now;
  private final Outlook outlook;

  Choosing(Sheet sheet, Ride last, Setup now, Outlook outlook) {
    this.sheet = sheet;
    this.last = last;
    this.now = now;
    this.outlook = outlook;
  }

  /** The best change of each setting, at most three, the greatest gain first. */
  List<Suggestion> best() {
    List<Suggestion> all = new ArrayList<>();
    for (Setting setting : candidates()) {
      Suggestion best = null;
      int most = setting.role().isClicker() ? MOST_CLICKS : MOST_DOSES;
      for (int doses = -most; doses <= most; doses++) {
        Optional<Suggestion> next = suggestion(setting, doses);
        boolean better =
            next.isPresent()
                && next.get().net() >= FINER_GAIN
                && (best == null || next.get().net() > best.net());
        best = better ? next.get() : best;
      }
      if (best != null) {
        all.add(best);
      }
    }
    return shown(all, Comparator.comparingDouble(each -> -each.net()));
  }

  /** When nothing looks better: the small change from which most could come. */
  List<Suggestion> tests() {
    List<Suggestion> all = new ArrayList<>();
    for (Setting setting : candidates()) {
      for (int doses = -TEST_DOSES; doses <= TEST_DOSES; doses += 2 * TEST_DOSES) {
        suggestion(setting, doses).filter(each -> !each.helped().isEmpty()).ifPresent(all::add);
      }
    }
    return shown(all, Comparator.comparingDouble(each -> each.cost() - outlook.hope(each)));
  }

  private List<Suggestion> shown(List<Suggestion> all, Comparator<Suggestion> order) {
    all.sort(order.thenComparing(each -> each.setting().id().text()));
    return all.subList(0, Math.min(MOST_SHOWN, all.size()));
  }

  private List<Setting> candidates() {
    return outlook.settings().stream()
        .filter(each -> each.work() != Work.SHOP)
        .filter(each -> each.dimension() != Dimension.SPRING_RATE)
        .filter(each -> now.reading(each.id()).filter(Reading::isKnown).isPresent())
        .toList();
  }

  /** The change by some doses, when it may be chosen and was not just gone back from. */
  private Optional<Suggestion> suggestion(Setting setting, int doses) {
    if (doses == 0) {
      return Optional.empty();
    }
    Reading from = now.reading(setting.id()).orElseThrow();
    Reading to = Doses.moved(setting, from, doses);
    boolean refused =
        to.amounts().stream().anyMatch(each -> Bounds.refusal(sheet, setting, each).isPresent());
    return refused || Tried.andReverted(last.session(), setting, from, to)
        ? Optional.empty()
        : Optional.of(outlook.suggestion(sheet, setting, from, to, doses));
  }
}
