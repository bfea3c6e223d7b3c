package rutbook.offenders.reasoning;

import rutbook.offenders.compare.WideCompare;

/** Knows compare, which the map does not allow. */
public record WideReasoning(WideCompare known) {}
