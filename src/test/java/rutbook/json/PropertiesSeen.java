package rutbook.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Which properties of a published schema were seen in texts that it describes. */
public final class PropertiesSeen {
  private final JsonNode root;
  private final Set<String> seen = new TreeSet<>();

  public PropertiesSeen(PublishedSchema schema) {
    this.root = schema.tree();
  }

  public void look(JsonNode text) {
    look("", root, text);
  }

  private void look(String name, JsonNode schema, JsonNode value) {
    if (schema.has("$ref")) {
      String next = schema.path("$ref").asText().substring("#/$defs/".length());
      look(next, root.path("$defs").path(next), value);
    }
    for (JsonNode each : schema.path("oneOf")) {
      if (fits(resolved(each), value)) {
        look(name, each, value);
      }
    }
    value.properties().stream()
        .filter(field -> schema.path("properties").has(field.getKey()))
        .forEach(
            field -> {
              seen.add(name + "." + field.getKey());
              look(name, schema.path("properties").path(field.getKey()), field.getValue());
            });
    if (schema.has("items")) {
      value.elements().forEachRemaining(each -> look(name, schema.path("items"), each));
    }
  }

  private JsonNode resolved(JsonNode schema) {
    return schema.has("$ref")
        ? resolved(root.at(schema.path("$ref").asText().substring(1)))
        : schema;
  }

  /** Enough to tell alternatives apart: the names that are there, and the words that never vary. */
  private boolean fits(JsonNode schema, JsonNode value) {
    if (schema.has("oneOf")) {
      List<JsonNode> inside = new ArrayList<>();
      schema.path("oneOf").forEach(inside::add);
      return inside.stream().anyMatch(each -> fits(resolved(each), value));
    }
    if (!value.isObject() || !schema.path("properties").isObject()) {
      return !value.isObject() && !schema.has("properties");
    }
    Set<String> needed = new HashSet<>();
    schema.path("required").forEach(each -> needed.add(each.asText()));
    return value.properties().stream()
            .allMatch(
                field -> {
                  JsonNode property = schema.path("properties").path(field.getKey());
                  return property.isObject()
                      && (!property.has("const")
                          || property.path("const").equals(field.getValue()));
                })
        && needed.stream().allMatch(value::has);
  }

  /** Properties that no text had, by the definition that declares them. */
  public Set<String> missing() {
    Set<String> missing = new TreeSet<>();
    root.path("$defs").properties().forEach(def -> declared(def.getKey(), def.getValue(), missing));
    missing.removeAll(seen);
    return missing;
  }

  private static void declared(String name, JsonNode schema, Set<String> into) {
    schema.path("properties").fieldNames().forEachRemaining(each -> into.add(name + "." + each));
    schema.path("properties").elements().forEachRemaining(each -> declared(name, each, into));
    schema.path("oneOf").forEach(each -> declared(name, each, into));
  }
}
