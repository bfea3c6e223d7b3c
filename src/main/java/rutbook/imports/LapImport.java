package rutbook.imports;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import rutbook.edit.MotoEdit;
import rutbook.imports.NotTaken.Why;
import rutbook.notebook.EntryId;
import rutbook.notebook.Lap;
import rutbook.notebook.Moto;
import rutbook.notebook.Report;

/**
 * The laps of one rider, as a file has them, and what of it is not taken.
 *
 * @param rows in the order in which they were ridden
 */
public record LapImport(List<Row> rows, List<NotTaken> notTaken) {

  /** One lap and the line of the file that it comes from. */
  public record Row(int line, long millis) {}

  /** Whose laps are wanted: of everybody in the file where it is empty, on whatever day. */
  public record Wanted(Optional<String> rider, Optional<LocalDate> day) {
    public static final Wanted ALL = new Wanted(Optional.empty(), Optional.empty());
  }

  public LapImport {
    rows = List.copyOf(rows);
    notTaken = List.copyOf(notTaken);
  }

  /** Whose laps the file holds, and how many rows each has; empty without a column of riders. */
  public static Map<String, Integer> riders(Grid grid, LapMapping mapping) {
    Map<String, Integer> riders = new LinkedHashMap<>();
    if (mapping.rider().isPresent()) {
      grid.values(mapping.rider().getAsInt()).forEach(name -> riders.merge(name, 1, Integer::sum));
    }
    return riders;
  }

  /** Whether the days of the file can be read in more than one way, and nobody said which. */
  public static boolean asksOrder(Grid grid, LapMapping mapping) {
    return mapping.day().isPresent()
        && mapping.order().isEmpty()
        && Days.needsOrder(grid.values(mapping.day().getAsInt()));
  }

  /** What would be taken. */
  public static LapImport of(Grid grid, LapMapping mapping, Wanted wanted) {
    List<Row> rows = new ArrayList<>();
    List<Numbered> numbered = new ArrayList<>();
    List<NotTaken> notTaken = new ArrayList<>();
    grid.above().forEach(row -> notTaken.add(NotTaken.above(row)));
    for (Grid.Row row : grid.rows()) {
      Optional<NotTaken> refused = refused(row, mapping, wanted);
      OptionalLong millis = millis(row, mapping);
      if (refused.isPresent()) {
        notTaken.add(refused.get());
      } else if (numbered.size() == Report.MOST_LAPS) {
        notTaken.add(NotTaken.row(row, Why.TOO_MANY_LAPS, text(row, mapping)));
      } else {
        numbered.add(new Numbered(number(row, mapping), new Row(row.line(), millis.getAsLong())));
      }
    }
    numbered.stream()
        .sorted(Comparator.comparingLong(Numbered::number))
        .forEach(each -> rows.add(each.row()));
    return new LapImport(rows, notTaken);
  }

  private record Numbered(long number, Row row) {}

  private static Optional<NotTaken> refused(Grid.Row row, LapMapping mapping, Wanted wanted) {
    if (mapping.rider().isPresent() && wanted.rider().isPresent()) {
      String rider = row.cells().get(mapping.rider().getAsInt());
      if (!rider.equals(wanted.rider().get())) {
        return Optional.of(NotTaken.row(row, Why.OTHER_RIDER, rider));
      }
    }
    if (mapping.day().isPresent() && wanted.day().isPresent()) {
      String day = row.cells().get(mapping.day().getAsInt());
      if (!Days.read(day, mapping.order()).equals(wanted.day())) {
        return Optional.of(NotTaken.row(row, Why.OTHER_DAY, day));
      }
    }
    String text = text(row, mapping);
    if (text.isBlank()) {
      return Optional.of(NotTaken.row(row, Why.NO_TIME, ""));
    }
    OptionalLong millis = millis(row, mapping);
    if (millis.isEmpty()) {
      return Optional.of(NotTaken.row(row, Why.BAD_TIME, text));
    }
    boolean fits = millis.getAsLong() >= 1 && millis.getAsLong() <= Lap.LONGEST_MILLIS;
    return fits ? Optional.empty() : Optional.of(NotTaken.row(row, Why.TIME_OUT_OF_RANGE, text));
  }

  private static String text(Grid.Row row, LapMapping mapping) {
    return String.join(" ", mapping.times().stream().map(row.cells()::get).toList());
  }

  private static OptionalLong millis(Grid.Row row, LapMapping mapping) {
    long sum = 0;
    for (int column : mapping.times()) {
      OptionalLong part = LapTime.millis(row.cells().get(column), mapping.unit());
      if (part.isEmpty()) {
        return OptionalLong.empty();
      }
      sum += part.getAsLong();
    }
    return mapping.times().isEmpty() ? OptionalLong.empty() : OptionalLong.of(sum);
  }

  /** The number of the lap; rows without one stay where they are among their likes. */
  private static long number(Grid.Row row, LapMapping mapping) {
    if (mapping.number().isEmpty()) {
      return row.line();
    }
    String number = row.cells().get(mapping.number().getAsInt());
    return number.matches("\\d{1,9}") ? Long.parseLong(number) : Long.MAX_VALUE;
  }

  public List<Lap> laps() {
    return rows.stream().map(row -> Lap.of(row.millis())).toList();
  }

  /** Whether a moto holds these laps, in this order, already. */
  public boolean isIn(Moto moto) {
    List<Long> there = moto.report().laps().stream().map(Lap::millis).toList();
    List<Long> mine = rows.stream().map(Row::millis).toList();
    return !mine.isEmpty() && java.util.Collections.indexOfSubList(there, mine) >= 0;
  }

  /**
   * The laps put into a moto.
   *
   * @param instead of those that are there, or after them
   */
  public MotoEdit.Laps edit(EntryId session, Moto moto, boolean instead) {
    List<Lap> next = new ArrayList<>(instead ? List.of() : moto.report().laps());
    next.addAll(laps());
    return new MotoEdit.Laps(session, moto.id(), next);
  }
}
