package rutbook.offenders.ui;

import java.io.File;

/** A file named the old way. */
record NamesFiles(File file) {}
