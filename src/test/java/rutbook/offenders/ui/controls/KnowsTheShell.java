package rutbook.offenders.ui.controls;

import rutbook.offenders.ui.WideUi;

/** A control that knows the shell. */
record KnowsTheShell(WideUi shell) {}
