package rutbook.notebook;

import java.util.List;

/**
 * A value that cannot be in a notebook: which fault, where (entry and path, filled in on the way
 * out) and the facts of it.
 */
public final class NotebookException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final Fault fault;
  private final String where;
  private final transient List<Object> facts;

  public NotebookException(Fault fault, Object... facts) {
    this("", fault, List.of(facts));
  }

  private NotebookException(String where, Fault fault, List<Object> facts) {
    super((where.isEmpty() ? "" : where + ": ") + fault + " " + facts);
    this.where = where;
    this.fault = fault;
    this.facts = facts;
  }

  /** The same fault, told to lie below the given place. */
  public NotebookException in(String place) {
    return new NotebookException(where.isEmpty() ? place : place + "/" + where, fault, facts);
  }

  public Fault fault() {
    return fault;
  }

  /** Path of the thing at fault, such as {@code entries/e12/start/fork-oil}; may be empty. */
  public String where() {
    return where;
  }

  public List<Object> facts() {
    return facts;
  }
}
