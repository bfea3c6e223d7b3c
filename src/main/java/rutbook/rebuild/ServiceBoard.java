package rutbook.rebuild;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rutbook.notebook.Due;
import rutbook.notebook.Entry;
import rutbook.notebook.Hours;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.units.Duration;

/**
 * The service items of a bike with their hours.
 *
 * @param hoursPerWeek the rider's own pace over the last weeks that were noted; empty when there
 *     are not two readings a week apart
 */
public record ServiceBoard(List<ServiceLine> lines, OptionalDouble hoursPerWeek) {
  /** How far back the pace looks; long enough for a wet month, short enough for a new season. */
  static final int PACE_DAYS = 12 * 7;

  /** Beyond this many days a forecast says nothing. */
  private static final int FARTHEST_DAYS = 5 * 366;

  public ServiceBoard {
    lines = List.copyOf(lines);
  }

  /** As it stands on a day, with the sheet in force then; the first one if it is not yet. */
  public static ServiceBoard of(Timeline timeline, LocalDate today) {
    Hours hours = timeline.hours();
    OptionalDouble pace = pace(timeline, hours, today);
    List<ServiceLine> lines = new ArrayList<>();
    for (ServiceItem item : sheet(timeline, today).services()) {
      double interval = item.interval().doubleIn(Duration.HOUR);
      double since = hours.since(item);
      double left = interval - since;
      lines.add(
          new ServiceLine(
              item,
              since,
              left,
              hours.everDone(item),
              Due.of(since, interval),
              forecast(today, left, pace),
              Fade.of(timeline, hours, item)));
    }
    return new ServiceBoard(lines, pace);
  }

  private static Sheet sheet(Timeline timeline, LocalDate today) {
    Sheet first = timeline.bike().sheets().get(0);
    return today.isBefore(first.from()) ? first : timeline.sheetOn(today);
  }

  public Optional<ServiceLine> line(ServiceItem item) {
    return lines.stream().filter(each -> each.item().equals(item)).findFirst();
  }

  /**
   * Hours a week from the first to the last meter reading within the last twelve weeks before
   * today, or, when there are none, within the twelve weeks before the last reading.
   */
  private static OptionalDouble pace(Timeline timeline, Hours hours, LocalDate today) {
    List<Entry> read =
        timeline.entries().stream()
            .filter(entry -> entry.head().meter().isPresent() && !entry.day().isAfter(today))
            .toList();
    if (read.isEmpty()) {
      return OptionalDouble.empty();
    }
    Entry last = read.get(read.size() - 1);
    LocalDate oldest = last.day().minusDays(PACE_DAYS);
    Entry first =
        read.stream().filter(entry -> !entry.day().isBefore(oldest)).findFirst().orElse(last);
    long days = ChronoUnit.DAYS.between(first.day(), last.day());
    double ridden = hours.at(last.id()) - hours.at(first.id());
    return days < 7 || ridden <= 0 ? OptionalDouble.empty() : OptionalDouble.of(ridden / days * 7);
  }

  private static Optional<LocalDate> forecast(
      LocalDate today, double left, OptionalDouble hoursPerWeek) {
    if (left <= 0 || hoursPerWeek.isEmpty()) {
      return Optional.empty();
    }
    double days = Math.ceil(left / hoursPerWeek.getAsDouble() * 7);
    return days > FARTHEST_DAYS ? Optional.empty() : Optional.of(today.plusDays((long) days));
  }
}
