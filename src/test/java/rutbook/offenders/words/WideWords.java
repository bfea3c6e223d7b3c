package rutbook.offenders.words;

import rutbook.offenders.report.WideReport;

/** Knows report, which the map does not allow. */
public record WideWords(WideReport known) {}
