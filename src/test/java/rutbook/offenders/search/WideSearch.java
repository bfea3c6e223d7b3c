package rutbook.offenders.search;

import rutbook.offenders.file.WideFile;

/** Knows file, which the map does not allow. */
public record WideSearch(WideFile known) {}
