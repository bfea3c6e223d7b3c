package rutbook.offenders.ui.log;

import rutbook.offenders.ui.bike.SomePage;

/** A page that knows a page. */
record KnowsAnotherPage(SomePage other) {}
