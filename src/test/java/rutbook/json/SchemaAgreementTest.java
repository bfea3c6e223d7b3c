package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rutbook.units.Unit;

/**
 * The shapes that read and write, and the schema that is published, walked side by side: a field, a
 * word or a kind that is in only one of them fails.
 */
class SchemaAgreementTest {
  private final Set<List<Object>> walked = new HashSet<>();
  private JsonNode root;

  @Test
  void theShapesAndTheSchemaSayTheSame() {
    root = PublishedSchema.NOTEBOOK.tree();
    walk(new NotebookShape(), root, "notebook");
    assertThat(walked).hasSizeGreaterThan(60);
  }

  @Test
  void theShapesOfASetupFileAndItsSchemaSayTheSame() {
    root = PublishedSchema.SETUP.tree();
    walk(new SetupFileShape(), root, "setup");
    assertThat(walked).hasSizeGreaterThan(40);
  }

  @Test
  void everythingDefinedIsUsed() {
    for (PublishedSchema schema : List.of(PublishedSchema.NOTEBOOK, PublishedSchema.SETUP)) {
      Set<String> used = new HashSet<>();
      schema
          .tree()
          .findValuesAsText("$ref")
          .forEach(ref -> used.add(ref.substring("#/$defs/".length())));
      assertThat(used).containsExactlyInAnyOrderElementsOf(names(schema.tree().path("$defs")));
    }
  }

  @Test
  void whatBothFilesHaveIsDefinedTheSame() {
    JsonNode setup = PublishedSchema.SETUP.tree().path("$defs");
    JsonNode notebook = PublishedSchema.NOTEBOOK.tree().path("$defs");
    List<String> both = names(setup).stream().filter(notebook::has).toList();
    assertThat(both).hasSizeGreaterThan(60);
    both.forEach(name -> assertThat(setup.path(name)).as(name).isEqualTo(notebook.path(name)));
  }

  private void walk(Shape<?> shape, JsonNode at, String path) {
    JsonNode schema = resolved(at);
    if (shape instanceof PresentShape<?> present) {
      walk(present.shape(), schema, path);
    } else if (shape instanceof ListShape<?> list) {
      walkList(list, schema, path);
    } else if (shape instanceof SetupShape setup) {
      walkList(setup.list(), schema, path);
    } else if (shape instanceof RecordShape<?> record) {
      walkRecord(record, schema, path);
    } else if (shape instanceof KindsShape<?> kinds) {
      walkKinds(kinds, schema, path);
    } else if (shape instanceof ReadingShape reading) {
      walkAlternatives(reading.objects(), schema, path);
    } else if (shape instanceof ReadingShape.ValueShape value) {
      walkAlternatives(List.of(value.object()), schema, path);
    } else if (shape instanceof LapShape lap) {
      walkAlternatives(List.of(lap.droppedLap()), schema, path);
    } else {
      walkLeaf(shape, schema, path);
    }
  }

  private void walkList(ListShape<?> list, JsonNode schema, String path) {
    assertThat(schema.path("type").asText()).as(path).isEqualTo("array");
    assertThat(schema.path("maxItems").asInt()).as(path).isBetween(1, ReadingLimits.ELEMENTS);
    walk(list.element(), schema.path("items"), path + "/0");
  }

  private void walkRecord(RecordShape<?> record, JsonNode schema, String path) {
    if (!walked.add(List.of(record.getClass(), schema))) {
      return;
    }
    assertThat(schema.path("type").asText()).as(path).isEqualTo("object");
    assertThat(schema.path("additionalProperties").asBoolean(true)).as(path).isFalse();
    assertThat(names(schema.path("properties"))).as(path).isEqualTo(record.fieldNames());
    List<String> required = new ArrayList<>();
    schema.path("required").forEach(name -> required.add(name.asText()));
    assertThat(required).as(path).containsExactlyInAnyOrderElementsOf(record.requiredNames());
    record
        .shapes()
        .forEach(
            (name, shape) -> walk(shape, schema.path("properties").path(name), path + "/" + name));
  }

  private void walkKinds(KindsShape<?> kinds, JsonNode schema, String path) {
    assertThat(schema.path("oneOf")).as(path).hasSize(kinds.kinds().size());
    for (Map.Entry<String, ? extends RecordShape<?>> kind : kinds.kinds().entrySet()) {
      List<JsonNode> same = new ArrayList<>();
      for (JsonNode each : schema.path("oneOf")) {
        if (word(resolved(each)).equals(kind.getKey())) {
          same.add(resolved(each));
        }
      }
      assertThat(same).as(path + " " + kind.getKey()).hasSize(1);
      walk(kind.getValue(), same.get(0), path + "/" + kind.getKey());
    }
  }

  private static String word(JsonNode schema) {
    return schema.path("properties").path(RecordShape.KIND).path("const").asText();
  }

  /** One text, and the objects told apart by their fields. */
  private void walkAlternatives(List<RecordShape<?>> objects, JsonNode schema, String path) {
    for (RecordShape<?> object : objects) {
      List<JsonNode> same = new ArrayList<>();
      for (JsonNode each : schema.path("oneOf")) {
        if (names(resolved(each).path("properties")).equals(object.fieldNames())) {
          same.add(resolved(each));
        }
      }
      assertThat(same).as(path + " " + object.fieldNames()).hasSize(1);
      walk(object, same.get(0), path);
    }
    assertThat(schema.path("oneOf")).as(path).hasSize(objects.size() + 1);
  }

  private void walkLeaf(Shape<?> shape, JsonNode schema, String path) {
    if (shape instanceof Words<?> words) {
      assertThat(texts(schema.path("enum"))).as(path).isEqualTo(words.words());
    } else if (shape instanceof Words.Several<?> several) {
      assertThat(schema.path("uniqueItems").asBoolean()).as(path).isTrue();
      walkLeaf(several.words(), resolved(schema.path("items")), path);
    } else if (shape instanceof Constant constant) {
      assertThat(schema.path("const").asText()).as(path).isEqualTo(constant.word());
    } else if (shape instanceof DisplayShape.UnitShape unit) {
      assertThat(texts(schema.path("enum")))
          .as(path)
          .isEqualTo(Unit.of(unit.dimension()).stream().map(Unit::symbol).toList());
    } else if (shape instanceof AmountShape) {
      walkAmount(schema, path);
    } else if (shape == Numbers.YES_OR_NO) {
      assertThat(schema.path("type").asText()).as(path).isEqualTo("boolean");
    } else if (shape == Numbers.WHOLE || (Object) shape == Numbers.WHOLE_IF_KNOWN) {
      assertThat(schema.has("const") || schema.path("type").asText().equals("integer"))
          .as(path)
          .isTrue();
    } else if (shape == Numbers.DECIMAL || (Object) shape == Numbers.NUMBER_IF_KNOWN) {
      assertThat(schema.path("type").asText()).as(path).isEqualTo("number");
      assertThat(schema.has("minimum") && schema.has("maximum")).as(path).isTrue();
    } else if (shape instanceof Ids.Repeated<?> ids) {
      walkLeaf(ids.each(), schema, path);
    } else {
      assertThat(shape).as(path).isInstanceOf(Texts.class);
      assertThat(schema.path("type").asText()).as(path).isEqualTo("string");
      assertThat(schema.has("pattern") || schema.has("maxLength")).as(path).isTrue();
    }
  }

  /** The pattern takes every unit of the kinds of quantity that it takes at all. */
  private void walkAmount(JsonNode schema, String path) {
    if (schema.has("oneOf")) {
      schema.path("oneOf").forEach(each -> walkAmount(resolved(each), path));
      return;
    }
    Pattern pattern = Pattern.compile(schema.path("pattern").asText());
    Set<Object> kinds = new HashSet<>();
    List<Unit> taken = new ArrayList<>();
    for (Unit unit : Unit.all()) {
      if (pattern.matcher("1.5 " + unit.symbol()).find()) {
        kinds.add(unit.dimension());
        taken.add(unit);
      }
    }
    assertThat(taken)
        .as(path)
        .isNotEmpty()
        .isEqualTo(Unit.all().stream().filter(unit -> kinds.contains(unit.dimension())).toList());
  }

  private JsonNode resolved(JsonNode schema) {
    if (!schema.has("$ref")) {
      return schema;
    }
    String name = schema.path("$ref").asText().substring("#/$defs/".length());
    return resolved(root.path("$defs").path(name));
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(each -> texts.add(each.asText()));
    return texts;
  }
}
