package rutbook.offenders.words;

import java.awt.Color;

/** A drawing toolkit of the printer outside report. */
record Prints(Color ink) {}
