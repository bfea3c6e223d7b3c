package rutbook.riders;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import rutbook.notebook.Feel;
import rutbook.notebook.Setting;
import rutbook.reasoning.RuleBook;

/**
 * A general-purpose optimiser that knows no suspension: a Gaussian process over the total of the
 * ratings, the single change with the lowest confidence bound (mean − 1 sd) next.
 */
final class ProcessOptimiser implements Method {
  private static final int[] STEPS = {-4, -2, -1, 1, 2, 4};
  private static final double LENGTH = 6;
  private static final double NOISE = 1.5;
  private static final double SIZE = 8;

  private final List<double[]> places = new ArrayList<>();
  private final List<Double> totals = new ArrayList<>();

  @Override
  public Optional<Choice> next(SimulatedRider rider, RuleBook book) {
    double[] here = rider.at();
    places.add(here);
    totals.add(rider.felt().values().stream().mapToDouble(Feel::severity).sum());
    double mean = totals.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    RealMatrix known = MatrixUtils.createRealIdentityMatrix(places.size()).scalarMultiply(NOISE);
    for (int i = 0; i < places.size(); i++) {
      for (int j = 0; j < places.size(); j++) {
        known.addToEntry(i, j, alike(places.get(i), places.get(j)));
      }
    }
    var solver = new CholeskyDecomposition(known).getSolver();
    double[] off = totals.stream().mapToDouble(each -> each - mean).toArray();
    double[] weights = solver.solve(new ArrayRealVector(off)).toArray();
    Choice best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Setting setting : rider.settings()) {
      for (int step : STEPS) {
        int doses = rider.room(setting, step);
        double[] there = here.clone();
        there[rider.settings().indexOf(setting)] += doses;
        double[] alike = places.stream().mapToDouble(each -> alike(each, there)).toArray();
        double expected = new ArrayRealVector(alike).dotProduct(new ArrayRealVector(weights));
        double sure =
            new ArrayRealVector(alike).dotProduct(solver.solve(new ArrayRealVector(alike)));
        double bound = expected - Math.sqrt(Math.max(0, SIZE - sure));
        if (doses != 0 && bound < least) {
          least = bound;
          best = Method.choice(rider, setting, doses);
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static double alike(double[] one, double[] other) {
    double squares = 0;
    for (int i = 0; i < one.length; i++) {
      squares += (one[i] - other[i]) * (one[i] - other[i]);
    }
    return SIZE * Math.exp(-squares / (2 * LENGTH * LENGTH));
  }
}
