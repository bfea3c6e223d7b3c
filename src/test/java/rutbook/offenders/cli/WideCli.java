package rutbook.offenders.cli;

import rutbook.offenders.ui.WideUi;

/** Knows ui, which the map does not allow. */
public record WideCli(WideUi known) {}
