package rutbook.stats;

import java.util.List;

/**
 * Linear regression with normal priors on rows of which some are only bounds (Tobin 1958): {@code z
 * = x·b + offset of the group + noise}, with z known, or known to be at most or at least a value.
 *
 * <p>The most likely coefficients by Newton's method on the normal equations (iteratively
 * reweighted least squares, a bound counting by {@code h (h + r)} of a measurement and pulling as
 * the mean of the truncated normal does); the logarithm of the posterior is concave, so there is
 * one answer. The covariance is the inverse curvature there (Laplace). Group offsets, normal about
 * zero, are eliminated before the equations are solved, so thousands of days cost no more than
 * their rows. Our approximation: an estimate, least close where all that is known of a coefficient
 * comes from one or two bounds.
 */
public final class CensoredRegression {

  private static final int MOST_ROUNDS = 200;
  private static final double DONE = 1e-16;

  private CensoredRegression() {}

  /**
   * What is known before.
   *
   * @param mean of each coefficient, within ±1e6
   * @param sd of each, 1e-6 to 1e6: independent of each other
   * @param groupSd of the groups' offsets about zero, 1e-6 to 1e6
   */
  public record Prior(double[] mean, double[] sd, double groupSd) {

    public Prior {
      mean = mean.clone();
      sd = sd.clone();
      Given.within("number of coefficients", mean.length, 1, 1000);
      Given.size("number of sds", sd.length, mean.length);
      for (int i = 0; i < sd.length; i++) {
        Given.within("prior mean", mean[i], -1e6, 1e6);
        Given.within("prior sd", sd[i], 1e-6, 1e6);
      }
      Given.within("sd of groups", groupSd, 1e-6, 1e6);
    }

    @Override
    public double[] mean() {
      return mean.clone();
    }

    @Override
    public double[] sd() {
      return sd.clone();
    }
  }

  /**
   * The fit; no rows give back the prior.
   *
   * @param noise sd of the noise of a row of weight one, 1e-6 to 1e6
   */
  public static CensoredFit fit(Prior prior, List<Observation> rows, double noise) {
    CensoredProblem problem = new CensoredProblem(prior, rows, noise);
    return fit(problem, problem.start());
  }

  /** The top is the same from wherever it is sought; from nearby it is found sooner. */
  private static CensoredFit fit(CensoredProblem problem, CensoredState from) {
    CensoredState state = from;
    double value = problem.logPosterior(state);
    CensoredEquations equations = new CensoredEquations(problem, state);
    int round = 0;
    while (round < MOST_ROUNDS) {
      CensoredState step = equations.step();
      if (equations.gain(step) < DONE * (1 + Math.abs(value))) {
        break;
      }
      round++;
      CensoredState next = better(problem, state, step, value);
      if (next == state) {
        break;
      }
      state = next;
      value = problem.logPosterior(state);
      equations = new CensoredEquations(problem, state);
    }
    return equations.fit(round);
  }

  /**
   * The noise that rows show, by expectation and maximisation from a first guess, at most {@code
   * rounds} fits; the first guess itself for no rows.
   *
   * @param least the noise is never taken as less
   */
  public static double noise(
      Prior prior, List<Observation> rows, double first, double least, int rounds) {
    return learned(prior, rows, new Noise(first, least, 1e6), rounds).noise();
  }

  /** The fit with the noise that {@link #noise} finds, which is never taken as more than most. */
  public static CensoredFit fit(Prior prior, List<Observation> rows, Noise noise, int rounds) {
    Learned learned = learned(prior, rows, noise, rounds);
    double taken = Math.min(noise.most(), learned.noise());
    return fit(new CensoredProblem(prior, rows, taken), learned.top());
  }

  /**
   * What is known of the noise of a row of weight one: sds from 1e-6 to 1e6.
   *
   * @param first guess
   */
  public record Noise(double first, double least, double most) {
    public Noise {
      Given.within("least noise", least, 1e-6, 1e6);
      Given.within("most noise", most, least, 1e6);
    }
  }

  private record Learned(double noise, CensoredState top) {}

  private static Learned learned(Prior prior, List<Observation> rows, Noise known, int rounds) {
    double noise = Math.max(known.least(), known.first());
    CensoredState top = new CensoredProblem(prior, rows, noise).start();
    for (int i = 0; i < rounds; i++) {
      CensoredFit fit = fit(new CensoredProblem(prior, rows, noise), top);
      top = CensoredState.of(fit);
      double next = Math.max(known.least(), noise * fit.noiseRatio());
      boolean settled = Math.abs(next - noise) < 1e-3 * noise;
      noise = Math.min(1e6, next);
      if (settled) {
        break;
      }
    }
    return new Learned(noise, top);
  }

  /** A state along the step that is better, the same when rounding leaves none. */
  private static CensoredState better(
      CensoredProblem problem, CensoredState state, CensoredState step, double value) {
    for (double size = 1; size > 1e-9; size /= 2) {
      CensoredState next = state.plus(step, size);
      if (problem.logPosterior(next) > value) {
        return next;
      }
    }
    return state;
  }
}
