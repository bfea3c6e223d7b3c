package rutbook.offenders.drawing;

import rutbook.offenders.words.WideWords;

/** Knows words, which the map does not allow. */
public record WideDrawing(WideWords known) {}
