package rutbook.offenders.share;

import rutbook.offenders.rebuild.WideRebuild;

/** Knows rebuild, which the map does not allow. */
public record WideShare(WideRebuild known) {}
