package rutbook.offenders.figures;

import rutbook.offenders.stats.WideStats;

/** Knows stats, which the map does not allow. */
public record WideFigures(WideStats known) {}
