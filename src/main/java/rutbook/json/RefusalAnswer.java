package rutbook.json;

import java.util.Optional;

/** What every command answers when it cannot do its job: the sentence, and the fault's place. */
public final class RefusalAnswer {
  private record Refused(String sentence, Optional<JsonFault> fault) {}

  private static final Facts<JsonFault> FAULT =
      Facts.of(JsonFault.class)
          .with("kind", Words.of(JsonFault.Kind.class), JsonFault::kind)
          .with("line", Numbers.WHOLE, JsonFault::line)
          .with("column", Numbers.WHOLE, JsonFault::column)
          .with("path", Texts.TEXT, JsonFault::path)
          .with("found", Texts.TEXT, JsonFault::found)
          .with("expected", Words.of(JsonFault.Expected.class), JsonFault::expected)
          .shortList("allowed", Texts.TEXT, JsonFault::allowed);

  private static final Facts<Refused> REFUSED =
      Facts.of(Refused.class)
          .with("sentence", Texts.TEXT, Refused::sentence)
          .ifKnown("fault", FAULT, Refused::fault);

  private RefusalAnswer() {}

  /**
   * @param sentence for the person
   * @param fault where a notebook's text is at fault
   */
  public static Reply of(String sentence, Optional<JsonFault> fault) {
    return Reply.of("refusal", REFUSED, new Refused(sentence, fault));
  }
}
