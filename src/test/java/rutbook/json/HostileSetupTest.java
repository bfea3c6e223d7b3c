package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Dice;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Shared;
import rutbook.samples.Samples;
import rutbook.share.SetupFile;
import rutbook.share.SetupFiles;
import rutbook.units.Display;
import rutbook.words.JsonWords;
import rutbook.words.Phrases;

/**
 * Setup files that somebody mutated, by the thousand: each is refused with a sentence, or is a
 * whole and valid file, and nothing else ever comes of it.
 */
class HostileSetupTest {
  private static final JsonWords WORDS = new JsonWords(Phrases.english(Display.METRIC));

  private static final List<String> TEXTS =
      List.of(
          "",
          "../../../etc/passwd",
          "C:\\\\Windows\\\\system.ini",
          "file:///etc/hosts",
          "\u202Egnp.exe",
          "\u0000",
          "\uD800",
          "=cmd|' /C calc'!A0",
          "<script>alert(1)</script>",
          "{9} ''",
          "x".repeat(70_000),
          "999999999 clicks",
          "1E+999999 clicks",
          "NaN",
          "2026-02-30",
          "hand-over-1",
          "setup.0",
          "coach",
          "session-1");

  private static final List<String> NODES =
      List.of(
          "null",
          "true",
          "-1",
          "1e400",
          "99999999999999999999",
          "[]",
          "{}",
          "[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]",
          "{\"__proto__\": {}}",
          "{\"@class\": \"java.lang.ProcessBuilder\"}",
          "{\"unknown\": \"stripped\"}");

  private final Map<JsonFault.Kind, Integer> refused = new EnumMap<>(JsonFault.Kind.class);
  private int valid;

  @Test
  void thousandsOfMutatedFilesAreRefusedInWordsOrValid() throws IOException {
    mutate(20261127, 3_000);
    assertThat(valid).isBetween(20, 2_000);
    assertThat(refused.keySet())
        .contains(
            JsonFault.Kind.SYNTAX,
            JsonFault.Kind.ENDS_EARLY,
            JsonFault.Kind.CHECKSUM,
            JsonFault.Kind.NOTEBOOK,
            JsonFault.Kind.UNKNOWN_FIELD,
            JsonFault.Kind.FIELD_TWICE,
            JsonFault.Kind.MISSING_FIELD,
            JsonFault.Kind.WRONG_TYPE,
            JsonFault.Kind.NOT_UTF8);
  }

  @Test
  @Tag("long")
  void aHundredThousandMutatedFilesAreRefusedInWordsOrValid() throws IOException {
    mutate(77, 100_000);
  }

  private void mutate(long seed, int files) throws IOException {
    Dice dice = new Dice(new Random(seed));
    List<byte[]> whole = new ArrayList<>();
    whole.add(SetupJson.write(advised(SetupFiles.whole(Samples.firstDay(), shared()), dice)));
    for (int i = 0; i < 6; i++) {
      SetupFile file = SetupFiles.whole(Notebooks.of(dice.random().nextLong(), 4), shared());
      whole.add(SetupJson.write(dice.once(3) ? file : advised(file, dice)));
    }
    for (int i = 0; i < files; i++) {
      byte[] bytes = dice.any(whole);
      attempt(dice.once(2) ? bytes(bytes, dice) : tree(bytes, dice));
    }
  }

  private static EnumSet<Shared> shared() {
    return EnumSet.allOf(Shared.class);
  }

  private static SetupFile advised(SetupFile file, Dice dice) {
    return SetupFiles.advised(file, dice);
  }

  private void attempt(byte[] bytes) {
    SetupJson.Read read;
    try {
      read = SetupJson.read(bytes);
    } catch (JsonException fault) {
      refused.merge(fault.fault().kind(), 1, Integer::sum);
      String sentence = WORDS.sentence(fault);
      assertThat(sentence).isNotBlank().endsWith(".").doesNotContain("Exception", "rutbook.");
      assertThat(sentence.chars().noneMatch(each -> each == 0x202E || each == 0)).isTrue();
      assertThat(sentence.length()).isLessThan(1_500);
      return;
    }
    valid++;
    byte[] again = SetupJson.write(read.file());
    assertThat(SetupJson.read(again).file()).isEqualTo(read.file());
    if (valid % 20 == 1) { // somebody else's validator takes its time
      assertThat(PublishedSchema.SETUP.faults(again)).isEmpty();
    }
  }

  /** Cut, flipped, doubled and overwritten without any knowledge of what it says. */
  private static byte[] bytes(byte[] whole, Dice dice) {
    byte[] bytes = whole.clone();
    switch (dice.below(4)) {
      case 0 -> {
        return Arrays.copyOf(bytes, dice.below(bytes.length));
      }
      case 1 -> bytes[dice.below(bytes.length)] ^= (byte) (1 << dice.below(8));
      case 2 -> {
        int from = dice.below(bytes.length - 40);
        System.arraycopy(whole, dice.below(whole.length - 40), bytes, from, dice.between(1, 40));
      }
      default -> {
        for (int i = dice.between(1, 5); i > 0; i--) {
          bytes[dice.below(bytes.length)] = (byte) "09\"-}{[],:e\u0007".charAt(dice.below(12));
        }
      }
    }
    return bytes;
  }

  /** Changed knowingly, mostly with a checksum that fits or without one. */
  private static byte[] tree(byte[] whole, Dice dice) throws IOException {
    ObjectNode tree = (ObjectNode) Trees.MAPPER.readTree(whole);
    for (int i = dice.between(1, 3); i > 0; i--) {
      change(tree, dice);
    }
    if (!dice.once(6)) {
      tree.remove("checksum");
      if (dice.once(2)) {
        tree.put("checksum", Canonical.sha256(tree));
      }
    }
    String text = Trees.MAPPER.writeValueAsString(tree);
    return (dice.once(12) ? twice(text, dice) : text).getBytes(StandardCharsets.UTF_8);
  }

  private static String twice(String text, Dice dice) {
    return text.replaceFirst(
        "\\{", "{\"" + dice.any(List.of("format", "coach", "handOver")) + "\":1,");
  }

  private static void change(ObjectNode tree, Dice dice) throws IOException {
    JsonNode at = tree;
    for (int depth = dice.below(9); depth > 0 && !children(at).isEmpty(); depth--) {
      at = dice.any(children(at));
    }
    JsonNode value =
        switch (dice.below(3)) {
          case 0 -> Trees.MAPPER.readTree(dice.any(NODES));
          case 1 -> com.fasterxml.jackson.databind.node.TextNode.valueOf(dice.any(TEXTS));
          default -> any(tree, dice).deepCopy();
        };
    if (at instanceof ObjectNode object) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      String name = names.isEmpty() || dice.once(6) ? "wheels" : dice.any(names);
      if (dice.once(4)) {
        object.remove(name);
      } else {
        object.set(name, value);
      }
    } else if (at instanceof ArrayNode array) {
      array.insert(dice.below(array.size() + 1), value);
    }
  }

  private static JsonNode any(JsonNode tree, Dice dice) {
    JsonNode at = tree;
    for (int depth = dice.between(1, 6); depth > 0 && !children(at).isEmpty(); depth--) {
      at = dice.any(children(at));
    }
    return at;
  }

  private static List<JsonNode> children(JsonNode node) {
    List<JsonNode> children = new ArrayList<>();
    node.elements().forEachRemaining(children::add);
    return children;
  }

  /** Brackets by the million, and lists by the hundred thousand: nothing is built from them. */
  @Test
  void whatIsTooDeepTooLongOrTooManyIsRefusedInWords() {
    String head = "{\"rutbook\": \"setup\", \"format\": 1, ";
    for (String hostile :
        List.of(
            head + "\"handOver\": " + "[".repeat(4 << 20),
            head + "\"handOver\": " + "{\"a\":".repeat(1 << 20),
            head + "\"setups\": [" + "{},".repeat(1 << 20),
            head + "\"tracks\": [" + "7,".repeat(2 << 20),
            head + "\"rider\": \"" + "x".repeat(6 << 20),
            head + "\"" + "x".repeat(1 << 20) + "\": 1",
            head + "\"x\": " + "9".repeat(1 << 20),
            "[".repeat(8 << 20))) {
      attempt(hostile.getBytes(StandardCharsets.UTF_8));
    }
    assertThat(valid).isZero();
    assertThat(refused.values().stream().mapToInt(each -> each).sum()).isEqualTo(8);
  }
}
