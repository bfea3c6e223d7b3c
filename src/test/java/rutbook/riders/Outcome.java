package rutbook.riders;

import java.util.List;

/**
 * What came of one simulated rider.
 *
 * @param solvedAt the moto after which the rider was solved, the greatest number when never
 * @param everWorse whether discomfort was ever above 1.5 times the start
 * @param left how often nothing was proposed before the rider was solved
 * @param rightlyLeft how often of these there was nothing to gain
 * @param restsOnceSolved whether nothing more is proposed to a rider who is solved
 * @param said every chance that was said, and whether the true discomfort fell
 */
record Outcome(
    int solvedAt,
    boolean everWorse,
    int left,
    int rightlyLeft,
    boolean restsOnceSolved,
    List<Said> said) {
  /** A chance that was said, and whether it helped. */
  record Said(double chance, boolean helped) {}
}
