package rutbook.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** The closed forms against the same worked out on the whole covariance matrix of the laps. */
class LapDriftTest {
  private static RealMatrix covariance(double correlation, int laps) {
    RealMatrix matrix = new Array2DRowRealMatrix(laps, laps);
    for (int i = 0; i < laps; i++) {
      for (int j = 0; j < laps; j++) {
        matrix.setEntry(i, j, Math.pow(correlation, Math.abs(i - j)));
      }
    }
    return matrix;
  }

  @Test
  void meanAndScatterAreThoseOfTheCovarianceMatrix() {
    for (double correlation : new double[] {0, 0.2, 0.4, 0.9}) {
      for (int laps : new int[] {2, 3, 6, 20}) {
        LapDrift drift = new LapDrift(correlation);
        RealMatrix matrix = covariance(correlation, laps);
        RealMatrix mean = new Array2DRowRealMatrix(laps, 1).scalarAdd(1.0 / laps);
        RealMatrix centred =
            MatrixUtils.createRealIdentityMatrix(laps)
                .subtract(new Array2DRowRealMatrix(laps, laps).scalarAdd(1.0 / laps));
        assertThat(drift.ofMean(laps))
            .isCloseTo(
                mean.transpose().multiply(matrix).multiply(mean).getEntry(0, 0), within(1e-12));
        assertThat(drift.seen(laps))
            .isCloseTo(centred.multiply(matrix).getTrace() / (laps - 1), within(1e-12));
      }
    }
  }

  @Test
  void withoutDriftMotosDifferByTheirOwnSdOnly() {
    assertThat(new LapDrift(0).motoSd(2, 6, 0.5)).isCloseTo(1, within(1e-12));
    assertThat(new LapDrift(0).motoSd(0, 6, 0.5)).isZero();
  }

  @Test
  void nonsenseIsRefusedWithItsNumber() {
    assertThatThrownBy(() -> new LapDrift(1)).hasMessageContaining("1");
    assertThatThrownBy(() -> new LapDrift(0.4).seen(1)).hasMessageContaining("1");
  }
}
