package rutbook.reasoning;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
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
  private static final int THROWN_AWAY = 50;
  private static final int KEPT = 100;

  private final List<Complaint> complaints;
  private final List<Setting> settings;
  private final PlausibleBikes bikes;
  private final PriorCell[][] cells;
  private final RuleBook book;
  private final Map<Complaint, Optional<Feel>> answered;

  private Reckoning(
      List<Complaint> complaints,
      List<Setting> settings,
      PriorCell[][] cells,
      PlausibleBikes bikes,
      RuleBook book,
      Map<Complaint, Optional<Feel>> answered) {
    this.complaints = complaints;
    this.settings = settings;
    this.cells = cells;
    this.bikes = bikes;
    this.book = book;
    this.answered = answered;
  }

  static Reckoning of(Sheet sheet, Setup baseline, Setup now, List<Ride> rides, RuleBook book) {
    List<Setting> settings =
        sheet.settings().stream().filter(each -> Doses.dose(each).isPresent()).toList();
    RideDoses doses = new RideDoses(settings, baseline);
    double[][] x = doses.of(rides);
    int from = Math.max(0, rides.size() - RECENT);
    List<Ride> recent = rides.subList(from, rides.size());
    TreeSet<Complaint> seen = new TreeSet<>();
    recent.forEach(ride -> seen.addAll(ride.feel().keySet()));
    List<Complaint> complaints = List.copyOf(seen);
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
      IntStream.range(0, old.length)
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
            RatingHabit.of(rides));
    List<PlausibleBikes.Bike> bikes =
        IntStream.range(0, CHAINS)
            .parallel()
            .mapToObj(
                chain ->
                    new BikeSampler(cells, room, ratings, old, 7 + chain).draw(THROWN_AWAY, KEPT))
            .flatMap(List::stream)
            .toList();
    return new Reckoning(complaints, settings, cells, new PlausibleBikes(bikes), book, answered);
  }

  private static PriorCell cell(
      Complaint complaint, Setting setting, Optional<Feel> answered, RuleBook book) {
    double size = 0;
    boolean disputed = false;
    for (Rule each : book.rules()) {
      if (each.role() == setting.role() && each.concerns(complaint)) {
        double share = Questions.share(each, answered);
        size += share * each.size();
        disputed |= share > 0 && (each.disputed() || share < 1);
      }
    }
    return PriorCell.of(size, disputed);
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
      RatingHabit habit) {
    int n = recent.size();
    double[] order = new double[n];
    double[] weight = new double[n];
    int[] day = new int[n];
    int[][] code = new int[complaints.size()][n];
    for (int t = 0; t < n; t++) {
      Ride ride = recent.get(t);
      order[t] = ride.order();
      weight[t] = ride.weight();
      day[t] = days(recent, t);
      for (int s = 0; s < complaints.size(); s++) {
        Feel feel = ride.feel().get(complaints.get(s));
        boolean quiet = feel == null && habit.silent() && !ride.feel().isEmpty();
        code[s][t] =
            feel != null
                ? RatingChances.code(feel.severity(), habit.coarse())
                : quiet ? RatingChances.silence(habit.coarse()) : RatingChances.NOT_MENTIONED;
      }
    }
    return new RecentRatings(x, now, order, order[n - 1], day, weight, code);
  }

  /** How many days with a ride back from the last one, 0 for the last day itself. */
  private static int days(List<Ride> recent, int t) {
    return (int) recent.subList(t, recent.size()).stream().mapToInt(Ride::day).distinct().count()
        - 1;
  }

  List<Complaint> complaints() {
    return complaints;
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
