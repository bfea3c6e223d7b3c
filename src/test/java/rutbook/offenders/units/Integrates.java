package rutbook.offenders.units;

import org.hipparchus.analysis.UnivariateFunction;

/** Hipparchus outside stats and physics. */
record Integrates(UnivariateFunction function) {}
