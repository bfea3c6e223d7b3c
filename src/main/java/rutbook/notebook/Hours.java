package rutbook.notebook;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Duration;

/** Running hours of a bike, folded from meter readings over meter changes and resets. */
public final class Hours {
  private final Timeline timeline;

  /** Hours run up to and including each entry, in the order of the timeline. */
  private final double[] run;

  /** Places of the few entries that may say that a service was done, oldest first. */
  private final int[] work;

  private final Optional<Amount> meter;

  private Hours(Timeline timeline, double[] run, int[] work, Optional<Amount> meter) {
    this.timeline = timeline;
    this.run = run;
    this.work = work;
    this.meter = meter;
  }

  static Hours of(Timeline timeline) {
    List<Entry> entries = timeline.entries();
    double[] run = new double[entries.size()];
    IntStream.Builder work = IntStream.builder();
    double total = 0;
    OptionalDouble meter = OptionalDouble.empty();
    Optional<Amount> reads = Optional.empty();
    for (int i = 0; i < run.length; i++) {
      Entry entry = entries.get(i);
      if (entry instanceof Entry.MeterChange change) {
        total += since(meter, hours(change.oldReads()));
        meter = OptionalDouble.of(hours(change.newReads()));
        reads = Optional.of(change.newReads());
      } else if (meter(entry).isPresent()) {
        Amount read = meter(entry).get();
        total += since(meter, hours(read));
        if (meter.isEmpty() || hours(read) >= meter.getAsDouble()) {
          reads = Optional.of(read);
        }
        meter = OptionalDouble.of(Math.max(hours(read), meter.orElse(0)));
      }
      if (entry instanceof Entry.Serviced || entry instanceof Entry.RebuildJob) {
        work.add(i);
      }
      run[i] = total;
    }
    return new Hours(timeline, run, work.build().toArray(), reads);
  }

  /**
   * Hours run since the reading before, or in all when it is the first, whoever wrote it down. A
   * reading below the one before adds nothing: meters do not run backwards unasked.
   */
  private static double since(OptionalDouble before, double reads) {
    return Math.max(0, reads - before.orElse(0));
  }

  /** What the meter read at an entry; a rebuild reads it at its first step. */
  private static Optional<Amount> meter(Entry entry) {
    Optional<Amount> noted = entry.head().meter();
    return noted.isPresent() || !(entry instanceof Entry.RebuildJob rebuild)
        ? noted
        : rebuild
            .done(StepId.METER)
            .flatMap(RebuildReadings::entered)
            .flatMap(reading -> reading.leg(Side.LEFT).known())
            .filter(read -> read.dimension() == Dimension.DURATION);
  }

  private static double hours(Amount amount) {
    return amount.doubleIn(Duration.HOUR);
  }

  /** What the meter that is fitted now read when it was last written down. */
  public Optional<Amount> meter() {
    return meter;
  }

  /** Hours run in all. */
  public double total() {
    return run.length == 0 ? 0 : run[run.length - 1];
  }

  /** Hours run up to and including an entry. */
  public double at(EntryId id) {
    return run[timeline.index(id)];
  }

  /** Hours since a service item was last done; since the first reading when it never was. */
  public double since(ServiceItem item) {
    OptionalInt done = lastDone(item);
    return done.isPresent() ? total() - run[done.getAsInt()] : total();
  }

  /** Hours since a service item was last done at each entry of the timeline, in its order. */
  public double[] sinceAtEach(ServiceItem item) {
    double[] since = run.clone();
    int[] done = done(item);
    for (int i = 0; i < done.length; i++) {
      int next = i + 1 < done.length ? done[i + 1] : run.length;
      for (int place = done[i]; place < next; place++) {
        since[place] = run[place] - run[done[i]];
      }
    }
    return since;
  }

  /** Whether the notebook ever says that the item was done. */
  public boolean everDone(ServiceItem item) {
    return lastDone(item).isPresent();
  }

  private OptionalInt lastDone(ServiceItem item) {
    for (int i = work.length - 1; i >= 0; i--) {
      if (settles(timeline.entries().get(work[i]), item)) {
        return OptionalInt.of(work[i]);
      }
    }
    return OptionalInt.empty();
  }

  /** Places of the entries that say that an item was done, oldest first. */
  private int[] done(ServiceItem item) {
    return Arrays.stream(work).filter(i -> settles(timeline.entries().get(i), item)).toArray();
  }

  /** Whether an entry says that a service item was done. */
  public static boolean settles(Entry entry, ServiceItem item) {
    if (entry instanceof Entry.Serviced serviced) {
      return serviced.items().contains(item.id());
    }
    if (!(entry instanceof Entry.RebuildJob rebuild)
        || rebuild.outcome() == Outcome.GIVEN_UP
        || rebuild.outcome() == Outcome.UNDER_WAY
        || rebuild.outcome() == Outcome.AT_THE_SHOP) {
      return false;
    }
    Job job = rebuild.job();
    return switch (item.kind()) {
      case FORK_OIL -> job.fork() && job.renewed().contains(Renewed.OIL);
      case FORK_SEALS -> job.fork() && job.renewed().contains(Renewed.SEALS);
      case SHOCK_OIL -> job.shock() && job.renewed().contains(Renewed.OIL);
      case LINKAGE, HEAD_BEARINGS, OTHER -> false;
    };
  }
}
