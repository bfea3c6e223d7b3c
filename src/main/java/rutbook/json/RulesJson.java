package rutbook.json;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.notebook.Bite;
import rutbook.notebook.End;
import rutbook.notebook.Role;
import rutbook.notebook.Symptom;
import rutbook.notebook.When;
import rutbook.reasoning.Rule;
import rutbook.reasoning.RuleBook;
import rutbook.reasoning.SectionGroup;

/** The rules of the trade as they stand in rules.json, read strictly. */
public final class RulesJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .addModule(new Jdk8Module())
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private RulesJson() {}

  record Book(String version, List<Row> rules) {}

  record Row(
      String id,
      End end,
      Symptom symptom,
      Set<SectionGroup> groups,
      Optional<Bite> bite,
      Optional<When> when,
      Role role,
      double size,
      boolean disputed,
      String reason) {
    Rule rule() {
      return new Rule(id, end, symptom, groups, bite, when, role, size, disputed, reason);
    }
  }

  /** The rules that come with the program. */
  public static RuleBook ofTheTrade() {
    try (InputStream in = RulesJson.class.getResourceAsStream("/rutbook/reasoning/rules.json")) {
      Book book = MAPPER.readValue(in, Book.class);
      return new RuleBook(book.version(), book.rules().stream().map(Row::rule).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
