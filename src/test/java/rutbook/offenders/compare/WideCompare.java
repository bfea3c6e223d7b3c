package rutbook.offenders.compare;

import rutbook.offenders.rebuild.WideRebuild;

/** Knows rebuild, which the map does not allow. */
public record WideCompare(WideRebuild known) {}
