package rutbook.json;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;

/** Texts as trees, for what must not depend on shapes: upgrades and checksums. */
final class Trees {
  static final ObjectMapper MAPPER =
      new ObjectMapper(In.FACTORY)
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  private Trees() {}
}
