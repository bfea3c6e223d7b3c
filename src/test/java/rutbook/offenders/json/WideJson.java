package rutbook.offenders.json;

import rutbook.offenders.file.WideFile;

/** Knows file, which the map does not allow. */
public record WideJson(WideFile known) {}
