package rutbook.offenders.file;

import rutbook.offenders.words.WideWords;

/** Knows words, which the map does not allow. */
public record WideFile(WideWords known) {}
