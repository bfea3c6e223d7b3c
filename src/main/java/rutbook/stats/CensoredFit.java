package rutbook.stats;

/**
 * What a censored regression learned.
 *
 * @param coefficients their most likely values and, by Laplace's approximation, how sure
 * @param groupOffsets the most likely offset of each group, in order
 * @param noiseRatio the noise that the rows show over the noise they were fitted with; one when it
 *     was right, one for no rows
 * @param rounds of Newton's method
 */
public record CensoredFit(
    Gaussian coefficients, java.util.List<Double> groupOffsets, double noiseRatio, int rounds) {

  public CensoredFit {
    groupOffsets = java.util.List.copyOf(groupOffsets);
  }
}
