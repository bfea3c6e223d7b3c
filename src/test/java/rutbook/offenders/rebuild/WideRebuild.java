package rutbook.offenders.rebuild;

import rutbook.offenders.file.WideFile;
import rutbook.offenders.units.WideUnits;

/** Knows file, which the map does not allow, and units, by which packages make a cycle. */
public record WideRebuild(WideFile known, WideUnits closing) {}
