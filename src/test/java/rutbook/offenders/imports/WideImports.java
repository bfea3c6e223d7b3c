package rutbook.offenders.imports;

import rutbook.offenders.words.WideWords;

/** Knows words, which the map does not allow. */
public record WideImports(WideWords known) {}
