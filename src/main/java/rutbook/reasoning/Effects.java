package rutbook.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Feel;
import rutbook.notebook.Setting;
import rutbook.notebook.TrackId;
import rutbook.stats.CensoredFit;
import rutbook.stats.CensoredRegression;
import rutbook.stats.Gaussian;
import rutbook.stats.Observation;

/** What each setting does to one complaint: the rules as prior, the rider's motos as evidence. */
public final class Effects {
  private static final double FLOOR = 0.10;
  private static final CensoredRegression.Noise NOISE = new CensoredRegression.Noise(0.8, 0.5, 1.5);
  private static final int ENOUGH_FOR_NOISE = 12;
  private static final int FIXED = 3;

  /** Ten hours of oil add so much to a complaint, give or take as much; our own estimate. */
  private static final double WEAR = 0.1;

  private final Complaint complaint;
  private final List<Setting> settings;
  private final double[] rule;
  private final double[] ruleSd;
  private final CensoredFit fit;
  private final double here;

  private Effects(
      Complaint complaint,
      List<Setting> settings,
      double[] rule,
      double[] ruleSd,
      CensoredFit fit,
      double here) {
    this.complaint = complaint;
    this.settings = settings;
    this.rule = rule;
    this.ruleSd = ruleSd;
    this.fit = fit;
    this.here = here;
  }

  /**
   * The effects after some rides.
   *
   * @param settings those with doses, in the sheet's order
   * @param doses of each ride, see {@link RideDoses}
   */
  static Effects of(
      Complaint complaint,
      List<Setting> settings,
      double[][] doses,
      List<Ride> rides,
      RuleBook book) {
    List<TrackId> tracks =
        rides.stream()
            .map(ride -> ride.session().track())
            .distinct()
            .sorted(Comparator.comparing(TrackId::text))
            .toList();
    double[] rule = new double[settings.size()];
    CensoredRegression.Prior prior = prior(complaint, settings, tracks, rides, book, rule);
    List<Observation> rows = new ArrayList<>();
    double[] last = null;
    int lastGroup = Observation.NO_GROUP;
    int group = -1;
    int day = -1;
    for (int i = 0; i < rides.size(); i++) {
      Ride ride = rides.get(i);
      double[] x = parts(complaint, ride, doses[i], tracks);
      last = x;
      Feel feel = ride.feel().get(complaint);
      if (feel != null) {
        if (ride.day() != day) {
          day = ride.day();
          group++;
        }
        rows.add(row(x, feel.severity(), group, ride.weight()));
      }
      lastGroup = ride.day() == day ? group : Observation.NO_GROUP;
    }
    CensoredFit fit =
        rows.size() < ENOUGH_FOR_NOISE
            ? CensoredRegression.fit(prior, rows, NOISE.first())
            : CensoredRegression.fit(prior, rows, NOISE, 2);
    double here = last == null ? -0.5 : fit.coefficients().along(last).mean();
    if (lastGroup >= 0) {
      here += fit.groupOffsets().get(lastGroup);
    }
    return new Effects(
        complaint,
        settings,
        rule,
        java.util.Arrays.copyOfRange(prior.sd(), FIXED, FIXED + settings.size()),
        fit,
        here);
  }

  private static CensoredRegression.Prior prior(
      Complaint complaint,
      List<Setting> settings,
      List<TrackId> tracks,
      List<Ride> rides,
      RuleBook book,
      double[] rule) {
    int n = FIXED + settings.size() + tracks.size();
    double[] mean = new double[n];
    double[] sd = new double[n];
    mean[0] = -0.5;
    sd[0] = 1.5;
    mean[1] = 0.2;
    sd[1] = 0.2;
    mean[2] = WEAR;
    sd[2] = WEAR;
    Optional<Feel> answered = Questions.lastAnswered(complaint, rides);
    for (int j = 0; j < settings.size(); j++) {
      double size = 0;
      boolean disputed = false;
      for (Rule each : book.rules()) {
        if (each.role() == settings.get(j).role() && each.concerns(complaint)) {
          double share = Questions.share(each, answered);
          size += share * each.size();
          disputed |= share > 0 && (each.disputed() || share < 1);
        }
      }
      rule[j] = size;
      mean[FIXED + j] = size;
      sd[FIXED + j] = (disputed ? 0.8 : 0.5) * Math.abs(size) + FLOOR;
    }
    for (int t = FIXED + settings.size(); t < n; t++) {
      sd[t] = 0.6;
    }
    return new CensoredRegression.Prior(mean, sd, 0.5);
  }

  private static Observation row(double[] x, int severity, int group, double weight) {
    Observation.Kind kind =
        severity == 0
            ? Observation.Kind.AT_MOST
            : severity == 5 ? Observation.Kind.AT_LEAST : Observation.Kind.MEASURED;
    double value = severity == 0 ? 0.5 : severity == 5 ? 4.5 : severity;
    return new Observation(x, value, kind, group, weight, 0);
  }

  private static double[] parts(
      Complaint complaint, Ride ride, double[] doses, List<TrackId> tracks) {
    double[] x = new double[FIXED + doses.length + tracks.size()];
    x[0] = 1;
    x[1] = ride.order();
    x[2] = ride.wear().of(complaint.end()) / 10;
    System.arraycopy(doses, 0, x, FIXED, doses.length);
    x[FIXED + doses.length + tracks.indexOf(ride.session().track())] = 1;
    return x;
  }

  public Complaint complaint() {
    return complaint;
  }

  /** Expected severity with the last ride's setup, track and day; below 0 is comfortably absent. */
  public double here() {
    return here;
  }

  /** Severity points per dose of a setting towards more, and how sure. */
  public Gaussian.Estimate perDose(Setting setting) {
    int j = index(setting);
    return new Gaussian.Estimate(fit.coefficients().mean(j), fit.coefficients().sd(j));
  }

  /** What the rules alone say, severity points per dose. */
  public double ruleSays(Setting setting) {
    return rule[index(setting) - FIXED];
  }

  /** The share that the motos have in what is known of a dose: 0 none, 1 all. */
  double own(Setting setting) {
    int j = index(setting);
    double before = ruleSd[j - FIXED];
    double after = fit.coefficients().sd(j);
    return Math.max(0, Math.min(1, 1 - after * after / (before * before)));
  }

  /** Settings whose effects the motos cannot tell apart yet: correlation above 0.7 in size. */
  public boolean cannotTellApart(Setting one, Setting other) {
    return Math.abs(fit.coefficients().correlation(index(one), index(other))) > 0.7;
  }

  /**
   * What the motos say of the doses without the prior: a Gaussian likelihood, everything else
   * averaged out.
   */
  OldEvidence asOldEvidence() {
    int n = settings.size();
    double[][] covariance = new double[n][n];
    double[] mean = new double[n];
    for (int i = 0; i < n; i++) {
      mean[i] = fit.coefficients().mean(FIXED + i);
      for (int j = 0; j < n; j++) {
        covariance[i][j] = fit.coefficients().covariance(FIXED + i, FIXED + j);
      }
    }
    double[][] precision = Gaussian.precision(covariance);
    double[] shift = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        shift[i] += precision[i][j] * mean[j];
      }
    }
    for (int i = 0; i < n; i++) {
      double weight = 1 / (ruleSd[i] * ruleSd[i]);
      precision[i][i] = Math.max(0, precision[i][i] - weight);
      shift[i] -= weight * rule[i];
    }
    return new OldEvidence(precision, shift);
  }

  private int index(Setting setting) {
    int at = settings.indexOf(setting);
    if (at < 0) {
      throw new IllegalArgumentException("no doses for " + setting.id().text());
    }
    return FIXED + at;
  }
}
