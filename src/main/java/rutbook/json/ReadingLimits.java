package rutbook.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.util.List;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;

/** What no file may exceed, looked at before anything is built from it. */
final class ReadingLimits {
  /** 64 MiB. */
  static final int BYTES = 64 << 20;

  /** 8 MiB: what comes from somebody else, a few hundred sessions at most. */
  static final int SETUP_BYTES = 8 << 20;

  static final int DEPTH = 64;
  static final int TEXT = 64 << 10;
  static final int NUMBER = 64;
  static final int NAME = 256;

  /** Whatever is written has more than two bytes a token. */
  static final long TOKENS = BYTES / 2;

  /** Elements of one list. */
  static final int ELEMENTS = 100_000;

  private ReadingLimits() {}

  /** More bytes than a file may have. */
  static JsonException tooLarge(long bytes, int most) {
    return new JsonException(
        new JsonFault(
            Kind.TOO_LARGE,
            0,
            0,
            "",
            String.valueOf(bytes),
            Expected.NOTHING,
            List.of(String.valueOf(most))));
  }

  /** The factory of every parser and generator: always UTF-8, always within the limits. */
  static JsonFactory factory() {
    return new JsonFactoryBuilder()
        .streamReadConstraints(
            StreamReadConstraints.builder()
                .maxDocumentLength(BYTES)
                .maxNestingDepth(DEPTH)
                .maxStringLength(TEXT)
                .maxNumberLength(NUMBER)
                .maxNameLength(NAME)
                .maxTokenCount(TOKENS)
                .build())
        .disable(JsonFactory.Feature.CHARSET_DETECTION)
        .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
        .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
        .build();
  }
}
