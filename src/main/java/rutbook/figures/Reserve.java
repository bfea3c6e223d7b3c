package rutbook.figures;

import rutbook.units.Amount;

/**
 * The energy in J that a fork takes from a stroke to the end of its travel: an estimate without
 * damping and friction. The sheet knows no bump stop, so it counts to full travel.
 *
 * @param from stroke from which it counts
 * @param slow J, n = 1.0
 * @param line J, n = 1.3
 * @param fast J, n = 1.4
 * @param dropHeight the height from which this could catch what the front carries, on the line;
 *     zero or less when the mass let go gently would use up the stroke
 */
public record Reserve(
    Amount from, double slow, double line, double fast, Figure<Amount> dropHeight) {}
