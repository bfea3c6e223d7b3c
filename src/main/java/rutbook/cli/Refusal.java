package rutbook.cli;

import java.util.Optional;
import rutbook.json.JsonFault;
import rutbook.json.RefusalAnswer;
import rutbook.json.Reply;

/** A sentence for the person at the terminal, and the exit code that goes with it. */
public final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int exit;
  private final transient Optional<JsonFault> fault;

  private Refusal(int exit, String sentence, Optional<JsonFault> fault) {
    super(sentence);
    this.exit = exit;
    this.fault = fault;
  }

  /** The command was used wrongly: exit 2. */
  public static Refusal use(String sentence) {
    return new Refusal(Exit.WRONG_USE, sentence, Optional.empty());
  }

  /** The notebook has not what it takes: exit 1. */
  static Refusal missing(String sentence) {
    return new Refusal(Exit.PROBLEM, sentence, Optional.empty());
  }

  /** The file cannot be read: exit 3. */
  public static Refusal file(String sentence) {
    return new Refusal(Exit.NO_FILE, sentence, Optional.empty());
  }

  /** The file's text is no notebook: exit 3. */
  public static Refusal file(String sentence, JsonFault fault) {
    return new Refusal(Exit.NO_FILE, sentence, Optional.of(fault));
  }

  /** Nobody foresaw it: exit 4. */
  static Refusal unexpected(String sentence) {
    return new Refusal(Exit.UNEXPECTED, sentence, Optional.empty());
  }

  Reply reply() {
    return RefusalAnswer.of(getMessage(), fault);
  }

  int exit() {
    return exit;
  }
}
