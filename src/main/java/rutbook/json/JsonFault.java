package rutbook.json;

import java.util.List;

/**
 * What is wrong with a text, as facts for the sentence that {@code words} makes of it.
 *
 * @param line counted from 1; 0 when the fault belongs to no place in the text
 * @param column counted from 1, in bytes of the line; 0 when there is no line
 * @param path to the thing at fault, such as {@code entries/3/motos/0}; empty for the whole
 * @param found what stood there, shortened; empty when nothing did
 * @param expected what should have stood there
 * @param allowed the words, fields or numbers that would have been right, if they can be listed
 */
public record JsonFault(
    Kind kind,
    int line,
    int column,
    String path,
    String found,
    Expected expected,
    List<String> allowed) {

  /** What is wrong; what {@code found} and {@code allowed} hold stands beside each. */
  public enum Kind {
    /** Bytes that are no UTF-8. */
    NOT_UTF8,
    /** No JSON; found: the text from there on. */
    SYNTAX,
    /** The text ends before the value does. */
    ENDS_EARLY,
    /** Something follows the value. */
    MORE_AFTER_END,
    /** More bytes than a file may have. Found: how many; allowed: how many. */
    TOO_LARGE,
    /** Brackets nested too deeply. Allowed: how deep. */
    TOO_DEEP,
    /** A text or number longer than any that makes sense. */
    TOO_LONG,
    /** A list with too many elements. Allowed: how many. */
    TOO_MANY,
    /** Another type of value. Found: the value; expected: the type. */
    WRONG_TYPE,
    /** A null, which is never written: what is not known is left out. */
    IS_NULL,
    /** A field that does not belong there. Found: its name; allowed: the fields. */
    UNKNOWN_FIELD,
    /** A field that must be there. Allowed: its name. */
    MISSING_FIELD,
    /** The same field twice. Found: its name. */
    FIELD_TWICE,
    /** The same word twice in a set. Found: the word. */
    WORD_TWICE,
    /** A word that is none of those allowed. */
    UNKNOWN_WORD,
    /** A text of the right type that says nothing, such as the 31st of April. */
    BAD_VALUE,
    /** Written by a newer program. Found: its format; allowed: the formats known here. */
    NEWER_FORMAT,
    /** A format that never was. Found: the number; allowed: the formats known here. */
    NO_SUCH_FORMAT,
    /**
     * Changed after it was written. Found: the checksum it has; allowed: the one it should have.
     */
    CHECKSUM,
    /** JSON in order, but not a notebook's: the facts are those of the notebook's fault. */
    NOTEBOOK
  }

  /** What should have stood there. */
  public enum Expected {
    NOTHING,
    OBJECT,
    LIST,
    TEXT,
    NUMBER,
    WHOLE_NUMBER,
    YES_OR_NO,
    ID,
    DAY,
    TIME,
    MOMENT,
    LAP_TIME,
    AMOUNT,
    READING,
    WORD,
    FIELD
  }

  public JsonFault {
    if (line < 0 || column < 0) {
      throw new IllegalArgumentException("line " + line + ", column " + column);
    }
    found = found.length() <= 60 ? found : found.substring(0, 60) + "…";
    allowed = List.copyOf(allowed);
  }
}
