package rutbook.offenders.imports;

import rutbook.offenders.compare.WideCompare;

/** Knows compare, which the map does not allow. */
public record WideImports(WideCompare known) {}
