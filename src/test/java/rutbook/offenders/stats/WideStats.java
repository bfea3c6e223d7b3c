package rutbook.offenders.stats;

import rutbook.offenders.notebook.WideNotebook;

/** Knows notebook, which the map does not allow. */
public record WideStats(WideNotebook known) {}
