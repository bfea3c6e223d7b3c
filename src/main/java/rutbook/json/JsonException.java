package rutbook.json;

import java.util.Optional;
import rutbook.notebook.NotebookException;

/** A text that cannot be read as what it should be; carries the facts, and the notebook's fault. */
public final class JsonException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final transient JsonFault fault;

  JsonException(JsonFault fault) {
    this(fault, null);
  }

  JsonException(JsonFault fault, Throwable cause) {
    super(fault.toString(), cause);
    this.fault = fault;
  }

  public JsonFault fault() {
    return fault;
  }

  /** The notebook's own fault, where the JSON was in order but its meaning was not. */
  public Optional<NotebookException> notebookFault() {
    return getCause() instanceof NotebookException cause ? Optional.of(cause) : Optional.empty();
  }
}
