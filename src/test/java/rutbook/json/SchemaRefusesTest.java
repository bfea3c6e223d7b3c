package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rutbook.notebook.AnyNotebook;

/** The schema refuses what the reader refuses, as far as a schema can. */
class SchemaRefusesTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final byte[] WHOLE = NotebookJson.write(AnyNotebook.whole());

  /** Put in the place of anything there is. */
  private static final List<String> INSTEAD =
      List.of(
          "null",
          "{}",
          "[]",
          "true",
          "7",
          "-1",
          "0.5",
          "1e400",
          "\"\"",
          "\"x y\"",
          "\"12 clicks\"",
          "\"-3 mm\"",
          "\"2026-02-30\"",
          "\"1900-05-01\"",
          "{\"unknown\": \"stripped\"}",
          "[[]]");

  private static JsonNode whole() {
    try {
      return MAPPER.readTree(WHOLE);
    } catch (IOException impossible) {
      throw new AssertionError(impossible);
    }
  }

  /** What the reader says; empty when it takes the text. */
  private static Optional<JsonException> reader(byte[] text) {
    try {
      NotebookJson.read(text);
      return Optional.empty();
    } catch (JsonException fault) {
      return Optional.of(fault);
    }
  }

  @Test
  void aFewHundredWrongValuesAreRefusedByBoth() throws IOException {
    assertThat(bothRefuse(350)).isGreaterThan(250);
  }

  @Test
  @Tag("long")
  void everyWrongValueInEveryPlaceIsRefusedByBoth() throws IOException {
    assertThat(bothRefuse(Integer.MAX_VALUE)).isGreaterThan(2000);
  }

  /**
   * What one side refuses and the other takes is allowed only where the reader knows more: what
   * belongs together in the notebook is no matter of one value.
   */
  private static int bothRefuse(int most) throws IOException {
    List<String[]> tries = new ArrayList<>();
    for (JsonPointer place : places().values()) {
      INSTEAD.forEach(instead -> tries.add(new String[] {place.toString(), instead}));
    }
    Collections.shuffle(tries, new Random(5));
    int refused = 0;
    for (String[] each : tries.subList(0, Math.min(most, tries.size()))) {
      byte[] text = with(each[0], each[1]);
      List<String> schema = PublishedSchema.NOTEBOOK.faults(text);
      Optional<JsonException> reader = reader(text);
      String said = each[0] + " = " + each[1] + ": " + schema + " / " + reader;
      if (reader.isEmpty()) {
        assertThat(schema).as(said).isEmpty();
      } else if (schema.isEmpty()) {
        assertThat(reader.get().fault().kind()).as(said).isIn(JsonFault.Kind.NOTEBOOK, dates(each));
      } else {
        refused++;
      }
    }
    return refused;
  }

  /** A pattern takes the 30th of February. */
  private static JsonFault.Kind dates(String[] each) {
    return each[1].contains("02-30") ? JsonFault.Kind.BAD_VALUE : JsonFault.Kind.NOTEBOOK;
  }

  /** One place of each kind: which element of a list it is makes no difference. */
  private static Map<String, JsonPointer> places() {
    Map<String, JsonPointer> places = new LinkedHashMap<>();
    collect(whole(), JsonPointer.empty(), "", places);
    return places;
  }

  private static void collect(
      JsonNode node, JsonPointer at, String kind, Map<String, JsonPointer> places) {
    String mine = kind + (node.has("kind") ? "<" + node.path("kind").asText() + ">" : "");
    if (!at.matches()) {
      places.putIfAbsent(mine + ":" + node.getNodeType(), at);
    }
    if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        collect(array.get(i), at.appendIndex(i), mine + "/-", places);
      }
    }
    node.properties()
        .forEach(
            field ->
                collect(
                    field.getValue(),
                    at.appendProperty(field.getKey()),
                    mine + "/" + field.getKey(),
                    places));
  }

  private static byte[] with(String place, String instead) throws IOException {
    JsonNode tree = whole();
    JsonPointer at = JsonPointer.compile(place);
    JsonNode parent = tree.at(at.head());
    JsonNode value = MAPPER.readTree(instead);
    if (parent instanceof ArrayNode array) {
      array.set(at.last().getMatchingIndex(), value);
    } else {
      ((ObjectNode) parent).set(at.last().getMatchingProperty(), value);
    }
    return MAPPER.writeValueAsBytes(tree);
  }

  @Test
  void aFieldTooManyOrTooFewIsRefusedByBothInEveryObject() throws IOException {
    int looked = 0;
    for (JsonPointer place : places().values()) {
      JsonNode there = whole().at(place);
      if (there instanceof ObjectNode object) {
        looked++;
        refusedByBoth(with(place.toString(), object.deepCopy().put("wheels", 2).toString()));
      }
    }
    assertThat(looked).isGreaterThan(60);
  }

  private static void refusedByBoth(byte[] text) {
    assertThat(reader(text)).isPresent();
    assertThat(PublishedSchema.NOTEBOOK.faults(text)).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/format|2",
        "/format|\"1\"",
        "/rutbook|\"card\"",
        "/id|\"-starts with a dash\"",
        "/units/volume|\"mm\"",
        "/bikes/0/sheets|[]",
        "/bikes/0/name|\"  \"",
        "/bikes/0/name|\"a\\u0007b\"",
        "/riders/0/weights/0/inGear|\"0 kg\"",
        "/riders/0/weights/0/inGear|\"80 mm\"",
        "/riders/0/weights/0/from|\"1969-12-31\"",
        "/riders/0/weights/0/from|\"2200-01-01\"",
        "/bikes/0/sheets/0/settings/0/scale/step|\"0 N/mm\"",
        "/bikes/0/sheets/0/parts/shock/motionRatio/value|21",
        "/bikes/0/sheets/0/parts/fork/travel|\"-300 mm\"",
        "/entries/0/setup/0/reading|\"1000000000000 clicks\"",
        "/entries/0/setup/0/reading|\"1E+200000000 clicks\"",
        "/entries/0/setup/0/reading|\"1.2345678901234 mm\"",
        "/entries/0/setup/0/reading|\"0.0000000000001 mm\"",
        "/entries/0/setup/0/reading|\"012 clicks\"",
        "/entries/0/setup/0/reading|\"12  clicks\"",
        "/entries/0/setup/0/reading|\"12 furlongs\"",
        "/entries/0/setup/0/reading|\"NaN clicks\"",
        "/entries/1/order|10001",
        "/entries/1/meter|\"100000.1 h\"",
        "/entries/1/time|\"24:00\"",
        "/entries/1/motos/0/report/trust|11",
        "/entries/1/motos/0/report/feel/0/severity|6",
        "/entries/1/motos/0/report/laps/1|\"0:00.000\"",
        "/entries/1/motos/0/report/laps/1|\"1440:00.001\"",
        "/entries/1/motos/0/report/laps/1|\"1:60.000\"",
        "/entries/3|{\"kind\":\"sag\",\"id\":\"s\",\"bike\":\"bike-1\",\"day\":\"2026-05-01\",\"end\":\"rear\"}",
        "/entries/4/done/1/step|\"place:-\"",
        "/entries/4/done/0/at|\"2026-05-03T14:05:00\"",
        "/entries/11/proposals/0/chance|1.5",
        "/ruleChanges/0/size|-5.5",
      })
  void whatNoNotebookHasIsRefusedByBoth(String place, String instead) throws IOException {
    refusedByBoth(with(place, instead));
  }

  /**
   * What only the reader can see, and why: a schema knows one value at a time, no two that belong
   * together, and no number's digits.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/entries/0/bike|\"no-such-bike\"|an id that is nowhere",
        "/entries/2/id|\"base-1\"|two entries with one id",
        "/entries/0/setup/0/setting|\"wings\"|a setting that no sheet has",
        "/entries/0/setup/1/reading|{\"left\":\"900 mL\",\"right\":\"900 mL\"}|beyond a limit",
        "/entries/0/setup/1/reading|{\"left\":\"12 mm\",\"right\":\"12 mm\"}|another quantity",
        "/entries/0/day|\"2025-01-01\"|no sheet in force yet",
        "/riders/0/weights/0/from|\"2026-02-30\"|a day that this month does not have",
        "/bikes/0/sheets/0/parts/shock/motionRatio/value|0.1234567890123|more digits than are kept",
        "/bikes/0/sheets/0/chambers/0/limits/least|\"9000 mL\"|the least above the most",
      })
  void whatBelongsTogetherOnlyTheReaderKnows(String place, String instead, String why)
      throws IOException {
    byte[] text = with(place, instead);
    assertThat(reader(text)).as(why).isPresent();
    assertThat(PublishedSchema.NOTEBOOK.faults(text)).as(why).isEmpty();
  }

  /** Spaces around a name are taken off by the reader; the schema takes the name with them. */
  @Test
  void aNameWithSpacesAroundItIsTakenByBoth() throws IOException {
    byte[] text = with("/bikes/0/name", "\"  Test 250 \"");
    assertThat(reader(text)).isEmpty();
    assertThat(PublishedSchema.NOTEBOOK.faults(text)).isEmpty();
  }
}
