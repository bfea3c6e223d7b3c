package rutbook.physics;

/**
 * A fork's forces in N at one stroke: coils alone, air on the line (n = 1.3), and the total slow (n
 * = 1.0), on the line, and fast (n = 1.4). An estimate.
 *
 * @param stroke m from full extension
 */
public record ForkPoint(
    double stroke, double coil, double air, double slow, double line, double fast) {}
