package rutbook.offenders.notebook;

import com.fasterxml.jackson.annotation.JsonProperty;

/** A value that carries the annotation of a library. */
record Decorated(@JsonProperty String name) {}
