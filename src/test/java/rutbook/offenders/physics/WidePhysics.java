package rutbook.offenders.physics;

import rutbook.offenders.units.WideUnits;

/** Knows units, which the map does not allow. */
public record WidePhysics(WideUnits known) {}
