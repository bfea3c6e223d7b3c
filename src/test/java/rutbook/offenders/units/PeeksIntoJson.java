package rutbook.offenders.units;

import com.fasterxml.jackson.databind.JsonNode;

/** Jackson outside json. */
record PeeksIntoJson(JsonNode node) {}
