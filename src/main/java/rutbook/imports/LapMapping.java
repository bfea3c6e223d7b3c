package rutbook.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rutbook.imports.ImportException.Fault;

/**
 * Which column of a timing system's file is what; columns are counted from 0.
 *
 * @param times the lap time, or the sectors that make it up
 * @param number of the lap, by which laps are put in order
 * @param rider a number or a name, where the file has more than one
 * @param day where the file has more than one
 * @param unit of a bare number
 * @param order of the days; empty where it was not said and is needed
 */
public record LapMapping(
    List<Integer> times,
    OptionalInt number,
    OptionalInt rider,
    OptionalInt day,
    LapUnit unit,
    Optional<DayOrder> order) {
  public LapMapping {
    times = List.copyOf(times);
  }

  /** What a column is. */
  public enum Kind {
    NOTHING,
    TIME,
    SECTOR,
    NUMBER,
    RIDER,
    DAY
  }

  public Kind kind(int column) {
    if (times.contains(column)) {
      return times.size() == 1 ? Kind.TIME : Kind.SECTOR;
    }
    if (is(number, column)) {
      return Kind.NUMBER;
    }
    if (is(rider, column)) {
      return Kind.RIDER;
    }
    return is(day, column) ? Kind.DAY : Kind.NOTHING;
  }

  /**
   * The same with a column meant otherwise; of what there is only one of, the column before is
   * nothing any more. A lap time takes the place of the sectors, and the other way round.
   */
  public LapMapping with(int column, Kind kind) {
    LapMapping without = without(column);
    return switch (kind) {
      case NOTHING -> without;
      case TIME -> without.withTimes(List.of(column));
      case SECTOR -> without.withTimes(sectors(without, column));
      case NUMBER ->
          new LapMapping(
              without.times, OptionalInt.of(column), without.rider, without.day, unit, order);
      case RIDER ->
          new LapMapping(
              without.times, without.number, OptionalInt.of(column), without.day, unit, order);
      case DAY ->
          new LapMapping(
              without.times, without.number, without.rider, OptionalInt.of(column), unit, order);
    };
  }

  private static List<Integer> sectors(LapMapping before, int column) {
    List<Integer> sectors = new ArrayList<>(before.times);
    sectors.add(column);
    return sectors.stream().sorted().toList();
  }

  private LapMapping without(int column) {
    return new LapMapping(
        times.stream().filter(each -> each != column).toList(),
        other(number, column),
        other(rider, column),
        other(day, column),
        unit,
        order);
  }

  private static OptionalInt other(OptionalInt place, int column) {
    return is(place, column) ? OptionalInt.empty() : place;
  }

  private static boolean is(OptionalInt place, int column) {
    return place.isPresent() && place.getAsInt() == column;
  }

  private LapMapping withTimes(List<Integer> newTimes) {
    return new LapMapping(newTimes, number, rider, day, unit, order);
  }

  public LapMapping in(LapUnit newUnit) {
    return new LapMapping(times, number, rider, day, newUnit, order);
  }

  public LapMapping with(DayOrder newOrder) {
    return new LapMapping(times, number, rider, day, unit, Optional.of(newOrder));
  }

  /** As it is remembered, and typed: {@code time=3,number=1,rider=2}, columns from 1. */
  public String text() {
    MappingText text = new MappingText();
    for (int time : times) {
      text.add(times.size() == 1 ? "time" : "sector", time);
    }
    number.ifPresent(column -> text.add("number", column));
    rider.ifPresent(column -> text.add("rider", column));
    day.ifPresent(column -> text.add("day", column));
    text.word("unit", unit);
    order.ifPresent(it -> text.word("order", it));
    return text.toString();
  }

  /**
   * @throws ImportException when it is no mapping of this table
   */
  public static LapMapping of(String text, Grid grid) {
    List<Integer> times = new ArrayList<>();
    LapMapping mapping =
        new LapMapping(
            times,
            OptionalInt.empty(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            LapUnit.SECONDS,
            Optional.empty());
    for (MappingText.Part part : MappingText.parts(text)) {
      mapping =
          switch (part.name()) {
            case "time" -> mapping.with(part.column(grid), Kind.TIME);
            case "sector" -> mapping.with(part.column(grid), Kind.SECTOR);
            case "number" -> mapping.with(part.column(grid), Kind.NUMBER);
            case "rider" -> mapping.with(part.column(grid), Kind.RIDER);
            case "day" -> mapping.with(part.column(grid), Kind.DAY);
            case "unit" -> mapping.in(part.word(LapUnit.values()));
            case "order" -> mapping.with(part.word(DayOrder.values()));
            default -> throw new ImportException(Fault.BAD_MAPPING, part.name());
          };
    }
    return mapping;
  }
}
