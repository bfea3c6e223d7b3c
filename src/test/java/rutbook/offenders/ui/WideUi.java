package rutbook.offenders.ui;

import rutbook.offenders.file.WideFile;

/** Knows file, which the map does not allow. */
public record WideUi(WideFile known) {}
