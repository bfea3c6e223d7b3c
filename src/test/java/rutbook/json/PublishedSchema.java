package rutbook.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A published schema as somebody else's validator reads it. */
public final class PublishedSchema {
  public static final PublishedSchema NOTEBOOK = new PublishedSchema("notebook.schema.json");
  public static final PublishedSchema SETUP = new PublishedSchema("setup.schema.json");
  public static final PublishedSchema ANSWERS = new PublishedSchema("answers.schema.json");

  private static final String PLACE = "/rutbook/json/";

  private final JsonNode tree;
  private final Schema schema;

  private PublishedSchema(String name) {
    this(tree(name));
  }

  private PublishedSchema(JsonNode tree) {
    this.tree = tree;
    this.schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(tree);
  }

  private static JsonNode tree(String name) {
    try (InputStream in = PublishedSchema.class.getResourceAsStream(PLACE + name)) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One of the things that this schema defines, taken alone. */
  public PublishedSchema only(String definition) {
    ObjectNode part = tree.deepCopy();
    part.remove("oneOf");
    return new PublishedSchema(part.put("$ref", "#/$defs/" + definition));
  }

  /** The schema itself. */
  public JsonNode tree() {
    return tree;
  }

  /** What is wrong with a text, each with its place; empty when it is as the schema says. */
  public List<String> faults(byte[] text) {
    return faults(new String(text, StandardCharsets.UTF_8));
  }

  public List<String> faults(String text) {
    return schema.validate(text, InputFormat.JSON).stream().map(Object::toString).toList();
  }
}
