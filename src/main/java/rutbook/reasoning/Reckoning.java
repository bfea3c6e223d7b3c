package rutbook.reasoning;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import rutbook.notebook.Feel;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;

/** The notebook's motos turned into what the sampler needs, and the bikes that it draws. */
final class Reckoning {
  /** Motos looked at one by one; older ones enter by their effects. */
  static final int RECENT = 16;

  private static final int CHAINS = 3;
  private static final int THROWN_AWAY = 40;
  private static final int KEPT = 80;

  private final Considered considered;
  private final List<Setting> settings;
  private final PlausibleBikes bikes;
  private final PriorCell[][] cells;
  private final RuleBook book;
  private final Map<Complaint, Optional<Feel>> answered;

  private Reckoning(
      Considered considered,
      List<Setting> settings,
      PriorCell[][] cells,
      PlausibleBikes bikes,
      RuleBook book,
      Map<Complaint, Optional<Feel>> answered) {
    this.considered = considered;
    this.settings = settings;
    this.cells = cells;
    this.bikes = bikes;
    this.book = book;
    this.answered = answered;
  }

  static Reckoning of(
      Sheet sheet, Setup baseline, Setup now, List<Ride> rides, RuleBook book, Likeness likeness) {
    List<Setting> settings =
        sheet.settings().stream().filter(each -> Doses.dose(each).isPresent()).toList();
    RideDoses doses = new RideDoses(settings, baseline);
    double[][] x = doses.of(rides);
    int from = Math.max(0, rides.size() - RECENT);
    List<Ride> recent = rides.subList(from, rides.size());
    RatingHabit habit = RatingHabit.of(rides);
    Considered considered =
        Considered.of(recent, habit, book, settings.stream().map(Setting::role).toList());
    List<Complaint> complaints = considered.all();
    PriorCell[][] cells = new PriorCell[complaints.size()][settings.size()];
    OldEvidence[] old = new OldEvidence[complaints.size()];
    Map<Complaint, Optional<Feel>> answered = new HashMap<>();
    for (int s = 0; s < cells.length; s++) {
      Optional<Feel> answer = Questions.lastAnswered(complaints.get(s), rides);
      answered.put(complaints.get(s), answer);
      for (int j = 0; j < settings.size(); j++) {
        cells[s][j] = cell(complaints.get(s), settings.get(j), answer, book);
      }
    }
    if (from > 0) {
      List<Ride> before = rides.subList(0, from);
      double[][] xBefore = Arrays.copyOfRange(x, 0, from);
      IntStream.range(0, considered.mentioned())
          .parallel()
          .forEach(
              s ->
                  old[s] =
                      Effects.of(complaints.get(s), settings, xBefore, before, book)
                          .asOldEvidence());
    }
    double[][] room = new double[settings.size()][];
    for (int j = 0; j < room.length; j++) {
      room[j] = room(sheet, settings.get(j), baseline);
    }
    RecentRatings ratings =
        ratings(
            recent,
            complaints,
            Arrays.copyOfRange(x, from, x.length),
            doses.of(now),
            considered.mentioned(),
            habit,
            likeness);
    List<PlausibleBikes.Bike> bikes =
        IntStream.range(0, CHAINS)
            .parallel()
            .mapToObj(
                chain ->
                    new BikeSampler(cells, room, ratings, old, 7 + chain).draw(THROWN_AWAY, KEPT))
            .flatMap(List::stream)
            .toList();
    return new Reckoning(considered, settings, cells, new PlausibleBikes(bikes), book, answered);
  }

  private static PriorCell cell(
      Complaint complaint, Setting setting, Optional<Feel> answered, RuleBook book) {
    List<Rule> rules =
        book.rules().stream()
            .filter(each -> each.role() == setting.role() && each.concerns(complaint))
            .toList();
    boolean disputed =
        rules.stream().anyMatch(each -> each.disputed() && Questions.share(each, answered) > 0);
    return PriorCell.of(Questions.sizes(rules, answered), disputed);
  }

  /** Doses from the baseline to the limits; none either way when the baseline does not say. */
  private static double[] room(Sheet sheet, Setting setting, Setup baseline) {
    Optional<Double> base = baseline.reading(setting.id()).flatMap(each -> Doses.of(setting, each));
    if (base.isEmpty()) {
      return new double[2];
    }
    double dose = Doses.dose(setting).orElseThrow().si() * Doses.sign(setting);
    double one = sheet.limits(setting).least().si() / dose - base.get();
    double other = sheet.limits(setting).most().si() / dose - base.get();
    return new double[] {Math.min(0, Math.min(one, other)), Math.max(0, Math.max(one, other))};
  }

  private static RecentRatings ratings(
      List<Ride> recent,
      List<Complaint> complaints,
      double[][] x,
      double[] now,
      int mentioned,
      RatingHabit habit,
      Likeness likeness) {
    int n = recent.size();
    double[] order = new double[n];
    int[] unsure = new int[n];
    int[] day = new int[n];
    int[][] code = new int[complaints.size()][n];
    for (int t = 0; t < n; t++) {
      Ride ride = recent.get(t);
      order[t] = ride.order();
      unsure[t] = ride.unsure(likeness.distance(ride.session(), recent.get(n - 1).session()));
      day[t] = days(recent, t);
      for (int s = 0; s < complaints.size(); s++) {
        Feel feel = ride.feel().get(complaints.get(s));
        boolean quiet = (s >= mentioned || habit.silent()) && !ride.feel().isEmpty();
        code[s][t] =
            feel != null
                ? RatingChances.code(feel.severity(), habit.coarse())
                : quiet ? RatingChances.silence(habit.coarse()) : RatingChances.NOT_MENTIONED;
      }
    }
    return new RecentRatings(x, now, order, order[n - 1], day, unsure, code);
  }

  /** How many days with a ride back from the last one, 0 for the last day itself. */
  private static int days(List<Ride> recent, int t) {
    return (int) recent.subList(t, recent.size()).stream().mapToInt(Ride::day).distinct().count()
        - 1;
  }

  Considered considered() {
    return considered;
  }

  List<Setting> settings() {
    return settings;
  }

  PriorCell cell(int complaint, int setting) {
    return cells[complaint][setting];
  }

  /** The greatest rule in force of a setting for a complaint. */
  Optional<Rule> rule(Complaint complaint, Setting setting) {
    return book.rule(complaint, setting, answered.get(complaint));
  }

  PlausibleBikes bikes() {
    return bikes;
  }
}
