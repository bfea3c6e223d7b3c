package rutbook.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

  /** A change that may be chosen, and what it promises. */
  private record Candidate(
      int place, Setting setting, Reading from, Reading to, int doses, Outlook.Prospect prospect) {
    double net() {
      return prospect.gain() - Outlook.cost(setting.work());
    }
  }

  /** The best change of each setting, at most three, the greatest gain first. */
  List<Suggestion> best() {
    List<Candidate> all = new ArrayList<>();
    for (int place : places()) {
      int most = outlook.settings().get(place).role().isClicker() ? MOST_CLICKS : MOST_DOSES;
      IntStream.rangeClosed(-most, most)
          .mapToObj(doses -> candidate(place, doses))
          .flatMap(Optional::stream)
          .filter(each -> each.net() >= FINER_GAIN)
          .max(
              Comparator.comparingDouble(Candidate::net)
                  .thenComparingInt(each -> -Math.abs(each.doses())))
          .ifPresent(all::add);
    }
    return suggested(all, Comparator.comparingDouble(each -> -each.net()))
        .limit(MOST_SHOWN)
        .toList();
  }

  /** When nothing looks better: the small change from which most could come. */
  List<Suggestion> tests() {
    List<Candidate> all = new ArrayList<>();
    for (int place : places()) {
      candidate(place, -TEST_DOSES).ifPresent(all::add);
      candidate(place, TEST_DOSES).ifPresent(all::add);
    }
    Comparator<Candidate> most =
        Comparator.comparingDouble(
            each -> Outlook.cost(each.setting().work()) - each.prospect().hope());
    return suggested(all, most).filter(each -> !each.helped().isEmpty()).limit(MOST_SHOWN).toList();
  }

  private Stream<Suggestion> suggested(List<Candidate> all, Comparator<Candidate> order) {
    return all.stream()
        .sorted(order.thenComparing(each -> each.setting().id().text()))
        .map(
            each ->
                outlook.suggestion(
                    sheet, each.place(), each.from(), each.to(), each.doses(), each.prospect()));
  }

  private int[] places() {
    List<Setting> all = outlook.settings();
    return IntStream.range(0, all.size()).filter(place -> mayBeMoved(all.get(place))).toArray();
  }

  private boolean mayBeMoved(Setting setting) {
    return setting.work() != Work.SHOP
        && setting.dimension() != Dimension.SPRING_RATE
        && now.reading(setting.id()).filter(Reading::isKnown).isPresent();
  }

  /** The change by some doses, when it may be chosen and was not just gone back from. */
  private Optional<Candidate> candidate(int place, int doses) {
    Setting setting = outlook.settings().get(place);
    if (doses == 0) {
      return Optional.empty();
    }
    Reading from = now.reading(setting.id()).orElseThrow();
    Reading to = Doses.moved(setting, from, doses);
    boolean refused =
        to.amounts().stream().anyMatch(each -> Bounds.refusal(sheet, setting, each).isPresent());
    return refused || Tried.andReverted(last.session(), setting, from, to)
        ? Optional.empty()
        : Optional.of(
            new Candidate(place, setting, from, to, doses, outlook.prospect(place, doses)));
  }
}
