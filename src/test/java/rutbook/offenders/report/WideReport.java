package rutbook.offenders.report;

import rutbook.offenders.json.WideJson;

/** Knows json, which the map does not allow. */
public record WideReport(WideJson known) {}
