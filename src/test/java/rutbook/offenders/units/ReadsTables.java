package rutbook.offenders.units;

import org.apache.commons.csv.CSVFormat;

/** The CSV library outside imports. */
record ReadsTables(CSVFormat format) {}
