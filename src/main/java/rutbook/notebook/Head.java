package rutbook.notebook;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/**
 * What every entry has: its id, bike, day, place within the day, time and meter if noted, and a
 * note. No time zone: a day is a day.
 */
public record Head(
    EntryId id,
    BikeId bike,
    LocalDate day,
    int order,
    Optional<LocalTime> time,
    Optional<Amount> meter,
    String note) {
  public Head {
    Checks.day(day);
    Checks.range("order", order, 0, 10_000);
    Checks.dimension("meter", meter, Dimension.DURATION);
    meter.ifPresent(hours -> Checks.range("meter", hours.value().doubleValue(), 0, 100_000));
    note = Checks.note("note", note);
  }

  public static Head of(EntryId id, BikeId bike, LocalDate day, int order) {
    return new Head(id, bike, day, order, Optional.empty(), Optional.empty(), "");
  }

  public Head withMeter(Optional<Amount> newMeter) {
    return new Head(id, bike, day, order, time, newMeter, note);
  }

  public Head withNote(String newNote) {
    return new Head(id, bike, day, order, time, meter, newNote);
  }

  public Head on(LocalDate newDay, int newOrder) {
    return new Head(id, bike, newDay, newOrder, time, meter, note);
  }
}
