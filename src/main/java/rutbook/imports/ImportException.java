package rutbook.imports;

import java.util.List;

/** A file of which nothing can be imported: which fault, and the facts of it. */
public final class ImportException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** What is wrong with the file as a whole; the facts that go with each are listed beside it. */
  public enum Fault {
    /** bytes, most */
    TOO_LARGE,
    /** most */
    TOO_MANY_ROWS,
    /** line, columns, most */
    TOO_MANY_COLUMNS,
    /** line, column, letters, most */
    CELL_TOO_LONG,
    /** line */
    NOT_A_TABLE,
    /** It holds what no text holds. */
    NOT_TEXT,
    EMPTY,
    /** what was said of the columns */
    BAD_MAPPING,
    /** the column that was named */
    NO_SUCH_COLUMN
  }

  private final Fault fault;
  private final transient List<Object> facts;

  public ImportException(Fault fault, Object... facts) {
    super(fault + " " + List.of(facts));
    this.fault = fault;
    this.facts = List.of(facts);
  }

  public Fault fault() {
    return fault;
  }

  public List<Object> facts() {
    return facts;
  }
}
