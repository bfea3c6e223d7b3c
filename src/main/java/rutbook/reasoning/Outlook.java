package rutbook.reasoning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.notebook.Bounds;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Work;
import rutbook.units.Amount;

/** What the plausible bikes expect: of the setup as it is, and of a change of it. */
final class Outlook {
  /** A change smaller than this is not spoken of. */
  private static final double NOT_FELT = 0.15;

  /** From here on what a complaint that was never mentioned costs counts: less is no word worth. */
  private static final double WORTH_A_WORD = 1;

  /** So many times what bothered before is notably worse. */
  private static final double NOTABLY = 1.25;

  /** No change is suggested that makes the whole notably worse with a greater chance. */
  private static final double MOST_RISK = 0.3;

  private final Reckoning reckoning;
  private final Trials trials;
  private final List<Bother> now;

  Outlook(Reckoning reckoning, Trials trials, Ride last) {
    this.reckoning = reckoning;
    this.trials = trials;
    List<Bother> bothers = new ArrayList<>();
    for (int s = 0; s < reckoning.considered().mentioned(); s++) {
      bothers.add(bother(s, last));
    }
    now = List.copyOf(bothers);
  }

  private Bother bother(int s, Ride last) {
    double[] here = drawn(bike -> bike.here()[s]);
    double[] left = drawn(bike -> bike.left()[s]);
    Complaint complaint = reckoning.considered().all().get(s);
    var feel = last.feel().get(complaint);
    return new Bother(
        complaint,
        mean(here),
        low(here),
        high(here),
        feel == null ? OptionalInt.empty() : OptionalInt.of(feel.severity()),
        mean(left));
  }

  private double[] drawn(java.util.function.ToDoubleFunction<PlausibleBikes.Bike> of) {
    return reckoning.bikes().bikes().stream().mapToDouble(of).sorted().toArray();
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElse(0);
  }

  private static double low(double[] sorted) {
    return sorted[sorted.length / 10];
  }

  private static double high(double[] sorted) {
    return sorted[sorted.length - 1 - sorted.length / 10];
  }

  /** What bothers with the setup as it is, the worst first. */
  List<Bother> now() {
    return now.stream()
        .sorted(Comparator.comparingDouble((Bother each) -> -each.expected()))
        .toList();
  }

  /** Summed severity expected with the setup as it is. */
  double discomfort() {
    return now.stream().mapToDouble(each -> Math.max(0, each.expected())).sum();
  }

  /** Summed severity expected at the most comfortable setup. */
  double staying() {
    return now.stream().mapToDouble(each -> Math.max(0, each.left())).sum();
  }

  List<Setting> settings() {
    return reckoning.settings();
  }

  /**
   * What a change of a setting by some doses promises.
   *
   * @param gain expected drop of the summed severity
   * @param chance that it drops at all, where a complaint that was never mentioned counts as soon
   *     as it is felt
   * @param hope mean drop over the bikes that it helps, 0 for the others
   * @param risk chance that all together is worse by more than a quarter, complaints that were
   *     never mentioned counted in full
   */
  record Prospect(double gain, double chance, double hope, double risk) {
    /** Whether it is too likely to make the whole notably worse. */
    boolean isRisky() {
      return risk > MOST_RISK;
    }
  }

  Prospect prospect(int j, int doses) {
    double gain = 0;
    double hope = 0;
    int better = 0;
    int worse = 0;
    for (PlausibleBikes.Bike bike : reckoning.bikes().bikes()) {
      double drop = 0;
      double felt = 0;
      double beyond = 0;
      for (int s = 0; s < bike.here().length; s++) {
        double here = bike.here()[s];
        double then = here + doses * bike.effect()[s][j];
        drop += drop(here, then, floor(s));
        felt += drop(here, then, s < now.size() ? 0 : Bother.FELT);
        beyond += Math.max(0, then) - NOTABLY * Math.max(0, here);
      }
      gain += drop;
      hope += Math.max(0, drop);
      better += felt > 1e-9 ? 1 : 0;
      worse += beyond > 1e-9 ? 1 : 0;
    }
    int n = reckoning.bikes().bikes().size();
    return new Prospect(gain / n, (double) better / n, hope / n, (double) worse / n);
  }

  /** Drop of the summed severity on one bike. */
  double drop(PlausibleBikes.Bike bike, Explanations.Move move) {
    double drop = 0;
    for (int s = 0; s < bike.here().length; s++) {
      double here = bike.here()[s];
      drop += drop(here, here + move.doses() * bike.effect()[s][move.setting()], floor(s));
    }
    return drop;
  }

  RuleTrust rules() {
    return RuleTrust.of(reckoning.bikes());
  }

  List<PlausibleBikes.Bike> bikes() {
    return reckoning.bikes().bikes();
  }

  Complaint complaint(int s) {
    return reckoning.considered().all().get(s);
  }

  /** How much less a complaint is felt; one that is absent cannot get better. */
  private static double drop(double here, double then, double floor) {
    return Math.max(floor, here) - Math.max(floor, then);
  }

  private double floor(int s) {
    return s < now.size() ? 0 : WORTH_A_WORD;
  }

  Suggestion suggestion(
      Sheet sheet, int j, Reading from, Reading to, int doses, Prospect prospect) {
    Setting setting = reckoning.settings().get(j);
    List<Suggestion.Shift> shifts = new ArrayList<>();
    for (int s = 0; s < reckoning.considered().all().size(); s++) {
      shift(s, j, doses).ifPresent(shifts::add);
    }
    shifts.sort(Comparator.comparingDouble(Suggestion.Shift::mean));
    return new Suggestion(
        setting,
        from,
        to,
        doses,
        prospect.gain(),
        prospect.chance(),
        cost(setting.work()),
        shifts,
        to.amounts().stream().anyMatch(at -> Bounds.isNearStop(sheet, setting, at)),
        room(sheet, setting, from, to),
        Optional.empty());
  }

  static double cost(Work work) {
    return switch (work) {
      case TRACKSIDE -> 0;
      case PADDOCK -> 0.1;
      case BENCH, SHOP -> 0.3;
    };
  }

  private static Optional<Amount> room(Sheet sheet, Setting setting, Reading from, Reading to) {
    boolean up = to.amounts().get(0).compareQuantity(from.amounts().get(0)) > 0;
    return to.amounts().stream()
        .map(
            at ->
                up
                    ? sheet.limits(setting).most().minus(at)
                    : at.minus(sheet.limits(setting).least()))
        .min(Amount::compareQuantity);
  }

  private Optional<Suggestion.Shift> shift(int s, int j, int doses) {
    double[] shift =
        drawn(
            bike -> -drop(bike.here()[s], bike.here()[s] + doses * bike.effect()[s][j], floor(s)));
    double mean = mean(shift);
    if (Math.abs(mean) < NOT_FELT) {
      return Optional.empty();
    }
    Complaint complaint = reckoning.considered().all().get(s);
    Setting setting = reckoning.settings().get(j);
    return Optional.of(
        new Suggestion.Shift(
            complaint,
            mean,
            low(shift),
            high(shift),
            reckoning.rule(complaint, setting),
            doses * reckoning.cell(s, j).rule(),
            trials.of(complaint, setting.id())));
  }
}
