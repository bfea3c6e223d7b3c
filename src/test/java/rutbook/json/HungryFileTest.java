package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rutbook.json.JsonFault.Kind;
import rutbook.notebook.Bench;

/**
 * Texts made to fill the memory are refused before it is taken: whatever was allocated until then
 * is not much more than the text itself.
 */
class HungryFileTest {
  /** Bytes that may be allocated for each byte of the text, and for any text at all. */
  private static final long FOR_EACH_BYTE = 3;

  private static final long FOR_ANY = 16L << 20;

  private static final int LARGE = 16 << 20;

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  @Test
  void bracketsWithoutEndAreTooDeep() {
    refused(repeated("[", LARGE), Kind.WRONG_TYPE);
    refused(around("\"entries\": ", repeated("[", LARGE)), Kind.WRONG_TYPE);
    refused(repeated("{\"rutbook\":", LARGE), Kind.TOO_DEEP);
  }

  @Test
  void aTextOrANumberOrANameOfManyMebibytesIsTooLong() {
    byte[] letters = joined(repeated("n", LARGE), "\": 1}".getBytes(StandardCharsets.UTF_8));
    refused(around("\"id\": \"", letters), Kind.TOO_LONG);
    refused(around("\"order\": ", repeated("1", LARGE)), Kind.TOO_LONG);
    refused(
        joined("{\"format\": ".getBytes(StandardCharsets.UTF_8), repeated("1", LARGE)),
        Kind.TOO_LONG);
    refused(around("\"", letters), Kind.TOO_LONG);
  }

  @Test
  void aListOfMillionsIsRefusedAtItsFirstElementThatIsNone() {
    refused(around("\"entries\": [", repeated("0,", LARGE)), Kind.WRONG_TYPE);
    refused(around("\"entries\": [", repeated("{},", LARGE)), Kind.MISSING_FIELD);
  }

  /** Each lap is right; a million of them are refused at the hundred thousand and first. */
  @Test
  void lapsWithoutEndAreTooMany() {
    String text = new String(NotebookJson.write(Bench.notebook()), StandardCharsets.UTF_8);
    String day = Bench.SPRING.toString();
    String session =
        "{\"kind\": \"session\", \"id\": \"s\", \"bike\": \"b\", \"day\": \"%s\", \"motos\": [{\"id\": \"m\", \"kind\": \"moto\", \"report\": {\"laps\": ["
            .formatted(day);
    String head = text.substring(0, text.indexOf("\"entries\""));
    byte[] start = (head + "\"entries\": [" + session).getBytes(StandardCharsets.UTF_8);
    refused(joined(start, repeated("\"1:30.000\",", LARGE)), Kind.TOO_MANY);
  }

  @Test
  void aFileLargerThanAnyIsNotLookedInto() {
    refused(new byte[ReadingLimits.BYTES + 1], Kind.TOO_LARGE);
  }

  /** The steps from older formats build a tree; it stays within the same limits. */
  @Test
  void anOlderFormatIsWithinTheSameLimits() {
    Upgrades fromZero = new Upgrades(1, Map.of(0, tree -> tree));
    byte[] start = "{\"format\": 0, \"tower\": ".getBytes(StandardCharsets.UTF_8);
    byte[] text = joined(start, repeated("[", LARGE));
    long before = allocated();
    JsonException refused =
        catchThrowableOfType(JsonException.class, () -> NotebookJson.read(text, fromZero));
    assertThat(refused.fault().kind()).isEqualTo(Kind.TOO_DEEP);
    assertThat(allocated() - before).isLessThan(FOR_EACH_BYTE * text.length + FOR_ANY);
  }

  private static void refused(byte[] text, Kind kind) {
    long before = allocated();
    JsonException refused =
        catchThrowableOfType(JsonException.class, () -> NotebookJson.read(text));
    long taken = allocated() - before;
    assertThat(refused).isNotNull();
    assertThat(refused.fault().kind()).isEqualTo(kind);
    assertThat(taken).as("bytes taken").isLessThan(FOR_EACH_BYTE * text.length + FOR_ANY);
  }

  private static long allocated() {
    return THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
  }

  private static byte[] repeated(String text, int length) {
    byte[] one = text.getBytes(StandardCharsets.UTF_8);
    byte[] all = new byte[length / one.length * one.length];
    for (int i = 0; i < all.length; i++) {
      all[i] = one[i % one.length];
    }
    return all;
  }

  private static byte[] around(String start, byte[] rest) {
    return joined(
        ("{\"rutbook\": \"notebook\", \"format\": 1, " + start).getBytes(StandardCharsets.UTF_8),
        rest);
  }

  private static byte[] joined(byte[] start, byte[] rest) {
    byte[] all = Arrays.copyOf(start, start.length + rest.length);
    System.arraycopy(rest, 0, all, start.length, rest.length);
    return all;
  }
}
