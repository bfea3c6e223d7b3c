package rutbook.offenders.rebuild;

import rutbook.offenders.stats.WideStats;

/** Knows stats, which the map does not allow. */
public record WideRebuild(WideStats known) {}
