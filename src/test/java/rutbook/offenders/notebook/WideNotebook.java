package rutbook.offenders.notebook;

import rutbook.offenders.edit.WideEdit;

/** Knows edit, which the map does not allow. */
public record WideNotebook(WideEdit known) {}
