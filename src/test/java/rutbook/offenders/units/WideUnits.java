package rutbook.offenders.units;

import rutbook.offenders.notebook.WideNotebook;

/** Knows notebook, which the map does not allow. */
public record WideUnits(WideNotebook known) {}
