package rutbook.offenders.units;

import picocli.CommandLine;

/** picocli outside cli. */
record ParsesTheCommandLine(CommandLine line) {}
