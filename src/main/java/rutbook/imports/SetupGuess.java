package rutbook.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rutbook.notebook.Carrier;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.units.AmountException;

/**
 * Finds out which column of a spreadsheet is which setting: the words of its heading must be those
 * of the setting, and its cells must be amounts of its kind.
 */
public final class SetupGuess {
  private static final double MOST = 0.6;

  /** So much of all words of heading and name must be in both. */
  private static final double ALIKE = 0.5;

  private static final int SHORTEST_START = 3;

  /** Common ways to write it shorter; common practice, no source. */
  private static final Map<String, List<String>> SHORT =
      Map.of(
          "lsc", List.of("low", "speed", "compression"),
          "hsc", List.of("high", "speed", "compression"),
          "ls", List.of("low", "speed"),
          "hs", List.of("high", "speed"),
          "fr", List.of("fork"),
          "rr", List.of("shock"));

  private static final Map<String, Side> LEGS =
      Map.of(
          "left",
          Side.LEFT,
          "l",
          Side.LEFT,
          "lh",
          Side.LEFT,
          "right",
          Side.RIGHT,
          "r",
          Side.RIGHT,
          "rh",
          Side.RIGHT);

  private static final Set<String> TRACK = Set.of("track", "place", "where", "venue", "circuit");
  private static final Set<String> NOTE = Set.of("note", "notes", "remark", "remarks", "comment");
  private static final Set<String> METER = Set.of("hours", "meter", "hourmeter", "hrs");

  private final Grid grid;
  private final Sheet sheet;
  private SetupMapping mapping;

  private SetupGuess(Grid grid, Sheet sheet) {
    this.grid = grid;
    this.sheet = sheet;
    this.mapping = SetupMapping.nothing(grid.columns(), DecimalMark.of(grid));
  }

  /** What can be told; the rest is nothing. */
  public static SetupMapping of(Grid grid, Sheet sheet) {
    return new SetupGuess(grid, sheet).guess();
  }

  /** Whether more can be told of the table when rows and columns change over. */
  public static boolean isTurned(Grid grid, Sheet sheet) {
    return known(of(grid.turned(), sheet)) > known(of(grid, sheet));
  }

  private static long known(SetupMapping mapping) {
    return mapping.columns().stream().filter(SetupColumn.OfSetting.class::isInstance).count();
  }

  private record Fit(int column, SetupColumn.OfSetting meant, double likeness) {}

  private SetupMapping guess() {
    days();
    named(TRACK, new SetupColumn.AtTrack());
    named(NOTE, new SetupColumn.Note());
    List<Fit> fits = new ArrayList<>();
    for (int column = 0; column < grid.columns(); column++) {
      for (Setting setting : sheet.settings()) {
        fit(column, setting).ifPresent(fits::add);
      }
    }
    fits.sort((a, b) -> Double.compare(b.likeness(), a.likeness()));
    for (Fit fit : fits) {
      if (isFree(fit.column()) && mapping.column(fit.meant()).isEmpty()) {
        mapping = mapping.with(fit.column(), fit.meant());
      }
    }
    named(METER, new SetupColumn.Meter());
    return mapping;
  }

  private boolean isFree(int column) {
    return mapping.columns().get(column) instanceof SetupColumn.Nothing;
  }

  private void days() {
    for (int column = 0; column < grid.columns(); column++) {
      List<String> values = grid.values(column);
      long days = values.stream().filter(Days::isDay).count();
      if (!values.isEmpty() && days >= MOST * values.size()) {
        mapping = mapping.with(column, new SetupColumn.Day());
        if (!Days.needsOrder(values)) {
          mapping = mapping.with(Days.orders(values).get(0));
        }
        return;
      }
    }
  }

  private void named(Set<String> words, SetupColumn meant) {
    for (int column = 0; column < grid.columns(); column++) {
      boolean named = Headings.words(grid.heading(column)).stream().anyMatch(words::contains);
      if (named && isFree(column)) {
        mapping = mapping.with(column, meant);
        return;
      }
    }
  }

  private Optional<Fit> fit(int column, Setting setting) {
    if (!isFree(column) || !isAmounts(column, setting)) {
      return Optional.empty();
    }
    List<String> words = new ArrayList<>(longer(Headings.words(grid.heading(column))));
    Optional<Side> leg = leg(words, setting);
    double likeness =
        Math.max(
            likeness(words, longer(Headings.words(setting.name()))),
            likeness(words, Headings.words(setting.role().name())));
    return likeness >= ALIKE
        ? Optional.of(new Fit(column, new SetupColumn.OfSetting(setting.id(), leg), likeness))
        : Optional.empty();
  }

  /** The leg that the heading names, which is taken out of its words. */
  private static Optional<Side> leg(List<String> words, Setting setting) {
    if (setting.carrier() != Carrier.PAIR) {
      return Optional.empty();
    }
    Optional<String> named = words.stream().filter(LEGS::containsKey).findFirst();
    named.ifPresent(words::remove);
    return named.map(LEGS::get);
  }

  private static List<String> longer(List<String> words) {
    return words.stream()
        .flatMap(word -> SHORT.getOrDefault(word, List.of(word)).stream())
        .toList();
  }

  /** The share of words that both have; a word may be cut short: comp, reb. */
  private static double likeness(List<String> some, List<String> others) {
    if (some.isEmpty() || others.isEmpty()) {
      return 0;
    }
    long shared =
        some.stream().filter(each -> others.stream().anyMatch(it -> same(each, it))).count();
    return (double) shared / Math.max(some.size(), others.size());
  }

  private static boolean same(String one, String other) {
    String shorter = one.length() <= other.length() ? one : other;
    String longer = one.length() <= other.length() ? other : one;
    return shorter.equals(longer)
        || shorter.length() >= SHORTEST_START && longer.startsWith(shorter);
  }

  private boolean isAmounts(int column, Setting setting) {
    List<String> values = grid.values(column);
    long fitting = values.stream().filter(cell -> isAmount(cell, column, setting)).count();
    return !values.isEmpty() && fitting >= MOST * values.size();
  }

  private boolean isAmount(String cell, int column, Setting setting) {
    try {
      return Cells.amount(cell, grid.heading(column), setting, mapping.decimals()).dimension()
          == setting.dimension();
    } catch (AmountException none) {
      return Stream.of("-", "?", "–").anyMatch(cell::equals);
    }
  }
}
