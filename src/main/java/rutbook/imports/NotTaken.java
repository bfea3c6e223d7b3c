package rutbook.imports;

import java.util.Optional;

/**
 * Something of the file that is not taken, and why.
 *
 * @param line of the file, from 1
 * @param cell what stood there; may be empty
 * @param of the setting whose cell it is; empty where it is the whole row
 * @param because what units or notebook said to it
 */
public record NotTaken(
    int line, Why why, String cell, String of, Optional<IllegalArgumentException> because) {
  static NotTaken row(Grid.Row row, Why why, String cell) {
    return new NotTaken(row.line(), why, cell, "", Optional.empty());
  }

  static NotTaken above(Grid.Row row) {
    return row(row, Why.ABOVE_THE_TABLE, String.join(" ", row.cells()).strip());
  }

  public boolean isWholeRow() {
    return of.isEmpty();
  }

  /** The reasons, each of which {@code words} has a sentence for. */
  public enum Why {
    /** It stands above the headings. */
    ABOVE_THE_TABLE,
    NO_TIME,
    BAD_TIME,
    /** A lap of more than a day, or of nothing. */
    TIME_OUT_OF_RANGE,
    OTHER_RIDER,
    OTHER_DAY,
    /** The moto holds no more laps. */
    TOO_MANY_LAPS,
    NO_DAY,
    BAD_DAY,
    /** There was no sheet of the bike yet. */
    NO_SHEET,
    NO_TRACK,
    /** Nothing of the row is a setting. */
    NO_READING,
    /** One cell of a row that is taken. */
    BAD_READING,
    /** A session of that bike, day and track is in the notebook. */
    ALREADY_THERE,
    /** The notebook refused it. */
    REFUSED,
    /** More rows than are taken at once. */
    TOO_MANY_ROWS
  }
}
