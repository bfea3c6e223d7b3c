package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rutbook.json.JsonFault.Kind;
import rutbook.notebook.Bench;
import rutbook.notebook.Notebook;
import rutbook.samples.Samples;
import rutbook.units.Display;
import rutbook.words.JsonWords;
import rutbook.words.Phrases;

/**
 * A file with one byte gone wrong, or cut off anywhere: a sentence, or a notebook that validates.
 */
class DamagedFileTest {
  private static final JsonWords WORDS = new JsonWords(Phrases.english(Display.METRIC));
  private static final int LONGEST_SENTENCE = 2_500;

  /** The validator takes a hundred times as long as the reader. */
  private static final int VALIDATED_ONE_IN =
      "long".equals(System.getProperty("rutbook.test.size")) ? 1 : 20;

  /** How many were told in a sentence, and how many are notebooks all the same. */
  private record Tally(int sentences, int notebooks) {}

  @Test
  void everyByteFlippedIsASentenceOrANotebookThatValidates() {
    byte[] whole = NotebookJson.write(Bench.notebook());
    Tally tally = new Tally(0, 0);
    for (int at = 0; at < whole.length; at++) {
      tally = with(flipped(whole, at, 1 << at % 8), tally);
    }
    assertThat(tally.sentences()).isGreaterThan(whole.length / 3);
    assertThat(tally.notebooks()).isPositive();
  }

  @Test
  @Tag("long")
  void everyByteOfTheSamplesFlippedInEveryBitIsASentenceOrANotebookThatValidates() {
    for (Notebook notebook : List.of(Samples.firstDay(), Samples.splitFork())) {
      byte[] whole = NotebookJson.write(notebook);
      Tally tally = new Tally(0, 0);
      for (int at = 0; at < whole.length; at++) {
        for (int bit = 0; bit < 8; bit++) {
          tally = with(flipped(whole, at, 1 << bit), tally);
        }
        tally = with(flipped(whole, at, 0xFF), tally);
      }
      assertThat(tally.sentences() + tally.notebooks()).isEqualTo(9 * whole.length);
      assertThat(tally.sentences()).isGreaterThan(3 * whole.length);
    }
  }

  @Test
  @Tag("long")
  void everyPrefixOfASeasonIsASentence() {
    byte[] whole = NotebookJson.write(Samples.splitFork());
    for (int length = 0; length < whole.length - 2; length++) {
      assertThat(with(Arrays.copyOf(whole, length), new Tally(0, 0))).isEqualTo(new Tally(1, 0));
    }
  }

  private static byte[] flipped(byte[] whole, int at, int bits) {
    byte[] flipped = whole.clone();
    flipped[at] ^= (byte) bits;
    return flipped;
  }

  /** Anything thrown but a fault of the text fails the test that asked. */
  private static Tally with(byte[] damaged, Tally before) {
    Notebook read;
    try {
      read = NotebookJson.read(damaged);
    } catch (JsonException refused) {
      assertThat(WORDS.sentence(refused)).isNotBlank().hasSizeLessThan(LONGEST_SENTENCE);
      return new Tally(before.sentences() + 1, before.notebooks());
    }
    byte[] again = NotebookJson.write(read);
    assertThat(NotebookJson.read(again)).isEqualTo(read);
    if (before.notebooks() % VALIDATED_ONE_IN == 0) {
      assertThat(PublishedSchema.NOTEBOOK.faults(again)).isEmpty();
    }
    return new Tally(before.sentences(), before.notebooks() + 1);
  }

  /** Found by fuzzing: an id of 4,000 letters was told in a sentence of 4,479. */
  @Test
  void whatIsFarTooLongIsQuotedOnlyInPart() {
    String text = new String(NotebookJson.write(Bench.notebook()), StandardCharsets.UTF_8);
    String id = "\"id\": \"" + Bench.notebook().id() + "\"";
    assertThat(text).contains(id);
    byte[] longer =
        text.replace(id, "\"id\": \"" + "long ".repeat(800) + "\"")
            .getBytes(StandardCharsets.UTF_8);
    try {
      NotebookJson.read(longer);
    } catch (JsonException refused) {
      assertThat(refused.fault().kind()).isEqualTo(Kind.NOTEBOOK);
      assertThat(WORDS.sentence(refused)).contains("long long").contains("…").hasSizeLessThan(300);
      return;
    }
    throw new AssertionError("an id of 4,000 letters was taken");
  }
}
