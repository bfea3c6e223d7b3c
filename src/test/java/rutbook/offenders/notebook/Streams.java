package rutbook.offenders.notebook;

import java.io.InputStream;

/** A stream in a pure package. */
record Streams(InputStream bytes) {}
