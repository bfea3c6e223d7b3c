package rutbook.offenders.edit;

import rutbook.offenders.compare.WideCompare;

/** Knows compare, which the map does not allow. */
public record WideEdit(WideCompare known) {}
