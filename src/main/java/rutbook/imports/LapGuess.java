package rutbook.imports;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Finds out which column of a timing system's file is what by looking at the values, and at the
 * headings where the values leave it open.
 */
public final class LapGuess {
  /** So much of a column must be of a kind: a pit stop or a remark between laps is no lap. */
  private static final double MOST = 0.8;

  private static final int LOOKED_AT = 500;

  /** Times of which so many are longer than the one before are counted from the start. */
  private static final double GROWS = 0.75;

  private static final int GROWING = 4;

  /** Sectors are rounded one by one: 2 ms each may be missing from their lap. */
  private static final long ROUNDED = 2;

  /** A bare whole number from here on counts thousandths: ten seconds are no lap in seconds. */
  private static final long IN_THOUSANDTHS = 10_000;

  private static final Set<String> LAP = Set.of("lap", "laps", "round");
  private static final Set<String> SECTOR =
      Set.of("s", "sector", "split", "section", "intermediate");
  private static final Set<String> WHOLE =
      Set.of("total", "elapsed", "since", "clock", "gap", "diff", "best", "behind");
  private static final Set<String> RIDER =
      Set.of(
          "rider", "name", "no", "nr", "bib", "plate", "transponder", "start", "fahrer", "pilote");

  private final Grid grid;
  private final int rows;

  private LapGuess(Grid grid) {
    this.grid = grid;
    this.rows = Math.min(grid.rows().size(), LOOKED_AT);
  }

  /** What can be told; the times are empty where no column looks like them. */
  public static LapMapping of(Grid grid) {
    return new LapGuess(grid).guess();
  }

  private LapMapping guess() {
    OptionalInt number = first(this::countsLaps);
    OptionalInt day = first(this::isDays);
    List<Integer> times =
        columns()
            .filter(column -> !is(number, column) && !is(day, column) && isTimes(column))
            .boxed()
            .toList();
    List<Integer> chosen = laps(times);
    Set<Integer> taken = new HashSet<>(times);
    number.ifPresent(taken::add);
    day.ifPresent(taken::add);
    OptionalInt rider = rider(taken);
    Optional<DayOrder> order =
        day.isPresent() && !Days.needsOrder(grid.values(day.getAsInt()))
            ? Days.orders(grid.values(day.getAsInt())).stream().findFirst()
            : Optional.empty();
    return new LapMapping(chosen, number, rider, day, unit(chosen), order);
  }

  private IntStream columns() {
    return IntStream.range(0, grid.columns());
  }

  private static boolean is(OptionalInt place, int column) {
    return place.isPresent() && place.getAsInt() == column;
  }

  private OptionalInt first(java.util.function.IntPredicate wanted) {
    return columns().filter(wanted).findFirst();
  }

  private String cell(int row, int column) {
    return grid.rows().get(row).cells().get(column);
  }

  private List<String> values(int column) {
    return grid.values(column).stream().limit(rows).toList();
  }

  private boolean mostly(int column, java.util.function.Predicate<String> kind) {
    List<String> values = values(column);
    return !values.isEmpty() && values.stream().filter(kind).count() >= MOST * values.size();
  }

  /** Whole numbers that go up by one or begin again, or are said to be of laps. */
  private boolean countsLaps(int column) {
    List<String> values = values(column);
    if (values.size() < 2 || !mostly(column, value -> value.matches("\\d{1,4}"))) {
      return false;
    }
    int steps = 0;
    int before = -1;
    for (String value : values) {
      int now = value.matches("\\d{1,4}") ? Integer.parseInt(value) : -1;
      boolean next = now == before + 1 && now <= values.size();
      steps += next || now == 1 && before != 1 ? 1 : 0;
      before = now;
    }
    return steps >= MOST * values.size() || named(column, LAP);
  }

  private boolean isDays(int column) {
    return mostly(column, Days::isDay);
  }

  private boolean isTimes(int column) {
    boolean readable = mostly(column, value -> LapTime.millis(value, LapUnit.SECONDS).isPresent());
    boolean looksLikeTime =
        mostly(column, value -> value.matches(".*[:.,'′].*"))
            || Headings.words(grid.heading(column)).stream()
                .anyMatch(word -> word.contains("time") || word.equals("ms"));
    return readable && looksLikeTime;
  }

  /** One lap time, or the sectors where there is none. */
  private List<Integer> laps(List<Integer> times) {
    List<Integer> laps =
        times.stream().filter(column -> growing(column) < GROWS && !named(column, WHOLE)).toList();
    if (laps.isEmpty()) {
      return times.size() == 1 ? times : List.of();
    }
    Optional<Integer> sum = laps.stream().filter(column -> isSumOfOthers(column, laps)).findFirst();
    if (sum.isPresent()) {
      return List.of(sum.get());
    }
    if (laps.stream().allMatch(column -> named(column, SECTOR))) {
      return laps;
    }
    List<Integer> whole = laps.stream().filter(column -> !named(column, SECTOR)).toList();
    return List.of(
        whole.stream()
            .max(
                Comparator.<Integer>comparingInt(
                        column -> named(column, Set.of("lap", "laptime")) ? 1 : 0)
                    .thenComparing(this::median))
            .orElseThrow());
  }

  /** A word of the heading, also with a number behind it: S1, Split 2. */
  private boolean named(int column, Set<String> words) {
    return Headings.words(grid.heading(column)).stream()
        .map(word -> word.replaceAll("\\d+$", ""))
        .anyMatch(words::contains);
  }

  /** How often a time is longer than the one before. */
  private double growing(int column) {
    long before = -1;
    int pairs = 0;
    int grown = 0;
    for (int row = 0; row < rows; row++) {
      OptionalLong now = LapTime.millis(cell(row, column), LapUnit.SECONDS);
      if (now.isPresent()) {
        pairs += before >= 0 ? 1 : 0;
        grown += before >= 0 && now.getAsLong() > before ? 1 : 0;
        before = now.getAsLong();
      }
    }
    return pairs < GROWING - 1 ? 0 : (double) grown / pairs;
  }

  private boolean isSumOfOthers(int column, List<Integer> times) {
    List<Integer> others = times.stream().filter(each -> each != column).toList();
    int looked = 0;
    int summed = 0;
    for (int row = 0; row < rows && others.size() > 1; row++) {
      OptionalLong whole = LapTime.millis(cell(row, column), LapUnit.SECONDS);
      OptionalLong parts = sum(row, others);
      if (whole.isPresent() && parts.isPresent()) {
        looked++;
        long off = Math.abs(whole.getAsLong() - parts.getAsLong());
        summed += off <= ROUNDED * others.size() ? 1 : 0;
      }
    }
    return looked > 0 && summed >= MOST * looked;
  }

  private OptionalLong sum(int row, List<Integer> columns) {
    long sum = 0;
    for (int column : columns) {
      OptionalLong part = LapTime.millis(cell(row, column), LapUnit.SECONDS);
      if (part.isEmpty()) {
        return OptionalLong.empty();
      }
      sum += part.getAsLong();
    }
    return OptionalLong.of(sum);
  }

  private long median(int column) {
    List<Long> sorted =
        values(column).stream()
            .map(value -> LapTime.millis(value, LapUnit.SECONDS))
            .filter(OptionalLong::isPresent)
            .map(OptionalLong::getAsLong)
            .sorted()
            .toList();
    return sorted.get(sorted.size() / 2);
  }

  private LapUnit unit(List<Integer> times) {
    boolean whole =
        !times.isEmpty()
            && times.stream().allMatch(column -> mostly(column, value -> value.matches("\\d+")));
    List<Long> sums = new ArrayList<>();
    times.forEach(column -> sums.add(median(column)));
    long bare = sums.stream().mapToLong(each -> each / 1000).sum();
    return whole && bare >= IN_THOUSANDTHS ? LapUnit.MILLISECONDS : LapUnit.SECONDS;
  }

  /** A column whose values come again: by its heading first, then names before numbers. */
  private OptionalInt rider(Set<Integer> taken) {
    List<Integer> again =
        columns().filter(column -> !taken.contains(column) && comesAgain(column)).boxed().toList();
    return again.stream()
        .max(
            Comparator.<Integer>comparingInt(column -> named(column, RIDER) ? 1 : 0)
                .thenComparingInt(column -> mostly(column, value -> value.matches("\\d+")) ? 0 : 1)
                .thenComparing(Comparator.reverseOrder()))
        .map(OptionalInt::of)
        .orElse(OptionalInt.empty());
  }

  private boolean comesAgain(int column) {
    List<String> values = values(column);
    return values.size() == rows && 2 * new HashSet<>(values).size() <= values.size();
  }
}
