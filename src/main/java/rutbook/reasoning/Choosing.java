package rutbook.reasoning;

import java.util.ArrayList;
import java.util.Arrays;
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

  /** Before any change was ridden: a rule that is reversed on this bike does less harm so. */
  private static final int FIRST_DOSES = 3;

  private final Sheet sheet;
  private final Ride last;
  private final Setup now;
  private final Outlook outlook;
  private final boolean untried;

  /**
   * After some rides.
   *
   * @param untried whether no change was ridden yet, so that nothing but rules speaks for any
   */
  Choosing(Sheet sheet, Ride last, Setup now, Outlook outlook, boolean untried) {
    this.untried = untried;
    this.sheet = sheet;
    this.last = last;
    this.now = now;
    this.outlook = outlook;
  }

  /** The best change of each setting, at most three, the greatest gain first. */
  List<Suggestion> best() {
    List<Candidate> all = new ArrayList<>();
    for (int place : places()) {
      int most = most(outlook.settings().get(place));
      IntStream.rangeClosed(-most, most)
          .mapToObj(doses -> candidate(place, doses))
          .flatMap(Optional::stream)
          .filter(each -> each.net() >= FINER_GAIN && !each.prospect().isRisky())
          .max(
              Comparator.comparingDouble(Candidate::net)
                  .thenComparingInt(each -> -Math.abs(each.doses())))
          .ifPresent(all::add);
    }
    return suggested(all.stream(), Comparator.comparingDouble(each -> -each.net()));
  }

  private int most(Setting setting) {
    int most = setting.role().isClicker() ? MOST_CLICKS : MOST_DOSES;
    return untried ? Math.min(FIRST_DOSES, most) : most;
  }

  /** When nothing looks better: the small change from which most could come. */
  List<Suggestion> tests() {
    return suggested(
        small().stream()
            .filter(each -> !each.prospect().isRisky())
            .filter(each -> !suggestion(each).helped().isEmpty()),
        Comparator.comparingDouble(
            each -> Outlook.cost(each.setting().work()) - each.prospect().hope()));
  }

  private List<Candidate> small() {
    return Arrays.stream(places())
        .boxed()
        .flatMap(place -> Stream.of(-TEST_DOSES, TEST_DOSES).map(each -> candidate(place, each)))
        .flatMap(Optional::stream)
        .toList();
  }

  private List<Suggestion> suggested(Stream<Candidate> all, Comparator<Candidate> order) {
    List<Candidate> shown =
        all.sorted(order.thenComparing(each -> each.setting().id().text()))
            .limit(MOST_SHOWN)
            .toList();
    return new ToTell(outlook, small()).with(shown, this::suggestion);
  }

  private Suggestion suggestion(Candidate each) {
    return outlook.suggestion(
        sheet, each.place(), each.from(), each.to(), each.doses(), each.prospect());
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
