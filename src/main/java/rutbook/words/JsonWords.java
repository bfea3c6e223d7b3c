package rutbook.words;

import rutbook.json.JsonException;
import rutbook.json.JsonFault;

/** Faults of a notebook's text as sentences: what, where, and what was expected. */
public final class JsonWords {
  private static final String AREA = "Json";

  private final Phrases phrases;
  private final FaultWords faults;

  public JsonWords(Phrases phrases) {
    this.phrases = phrases;
    this.faults = new FaultWords(phrases);
  }

  public String sentence(JsonException thrown) {
    JsonFault fault = thrown.fault();
    String what = thrown.notebookFault().map(faults::sentence).orElseGet(() -> what(fault));
    if (fault.line() == 0) {
      return what;
    }
    return fault.path().isEmpty()
        ? phrases.say(AREA, "at", fault.line(), fault.column(), what)
        : phrases.say(AREA, "at.path", fault.line(), fault.column(), what, fault.path());
  }

  private String what(JsonFault fault) {
    String expected = phrases.say(AREA, "Expected." + fault.expected().name());
    String allowed = String.join(", ", fault.allowed());
    return phrases.say(AREA, "Kind." + fault.kind().name(), fault.found(), expected, allowed);
  }
}
