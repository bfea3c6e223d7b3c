package rutbook.notebook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ArbitrarySupplier;
import net.jqwik.api.Combinators;
import rutbook.units.Dimension;
import rutbook.units.Display;

/**
 * Random whole notebooks: one to three bikes of different make-up, every kind of entry, readings
 * set and found, and names in many scripts.
 */
public final class Notebooks implements ArbitrarySupplier<Notebook> {
  private static final int MOST_ENTRIES = 40;

  /** Shrinks to fewer entries of the same dice. */
  @Override
  public Arbitrary<Notebook> get() {
    return Combinators.combine(Arbitraries.longs(), Arbitraries.integers().between(0, MOST_ENTRIES))
        .as(Notebooks::of);
  }

  /** The same for the same seed; each bike has a baseline and a session besides the entries. */
  public static Notebook of(long seed, int entries) {
    Dice dice = new Dice(new Random(seed));
    Shelf shelf = shelf(dice);
    RandomEntries random = new RandomEntries(dice, shelf);
    List<Entry> all = new ArrayList<>();
    for (Bike bike : shelf.bikes()) {
      Entry.Baseline baseline = random.baseline(random.head(bike));
      all.add(baseline);
      all.add(random.session(random.head(bike)));
      for (int i = 0; i < entries; i++) {
        all.add(random.any(random.head(bike), baseline));
      }
    }
    Collections.shuffle(all, dice.random());
    return Notebook.of(new NotebookId(dice.id("nb")), shelf, all, rules(dice), dice.any(DISPLAYS));
  }

  private static final List<Display> DISPLAYS = List.of(Display.METRIC, Display.US);

  private static Shelf shelf(Dice dice) {
    List<Bike> bikes = new ArrayList<>();
    for (int i = dice.below(6) < 4 ? 1 : dice.between(2, 3); i > 0; i--) {
      bikes.add(RandomBike.of(dice, new BikeId("bike-" + i)));
    }
    List<Track> tracks = new ArrayList<>();
    List<Rider> riders = new ArrayList<>();
    for (int i = dice.between(1, 3); i > 0; i--) {
      tracks.add(track(dice, "track-" + i));
      riders.add(rider(dice, "rider-" + i));
    }
    return new Shelf(riders, bikes, tracks, dice.times(2, () -> oil(dice, dice.id("oil"))));
  }

  public static Track track(Dice dice, String id) {
    return new Track(
        new TrackId(id),
        dice.name(),
        dice.maybe(() -> dice.any(Ground.class)),
        dice.maybe(() -> dice.of(Dimension.LENGTH, -100, 3000)),
        dice.note());
  }

  public static Rider rider(Dice dice, String id) {
    List<Rider.Weight> weights = new ArrayList<>();
    for (int i = dice.below(3); i > 0; i--) {
      weights.add(
          new Rider.Weight(Bench.SPRING.plusDays(i * 30L), dice.of(Dimension.MASS, 40, 140)));
    }
    return new Rider(new RiderId(id), dice.name(), weights);
  }

  public static Oil oil(Dice dice, String id) {
    return new Oil(
        new OilId(id),
        dice.name(),
        dice.maybe(() -> dice.of(Dimension.KINEMATIC_VISCOSITY, 12, 40)),
        dice.maybe(() -> dice.of(Dimension.KINEMATIC_VISCOSITY, 2, 9)));
  }

  public static Bike bike(Dice dice, BikeId id) {
    return RandomBike.of(dice, id);
  }

  public static List<RuleChange> rules(Dice dice) {
    List<RuleChange> changes = new ArrayList<>();
    for (int i = dice.below(3); i > 0; i--) {
      changes.add(
          new RuleChange("rule-" + i, BigDecimal.valueOf(dice.between(-500, 500), 2), dice.name()));
    }
    return changes;
  }

  /** The same notebook with its entries stored in another order. */
  public static Notebook shuffled(Notebook notebook, long seed) {
    List<Entry> entries = new ArrayList<>(notebook.entries());
    Collections.shuffle(entries, new Random(seed));
    return Notebook.of(
        notebook.id(), notebook.shelf(), entries, notebook.ruleChanges(), notebook.display());
  }

  /** An entry of the notebook of a kind, if it has one. */
  public static <T extends Entry> Optional<T> anEntry(Notebook notebook, Dice dice, Class<T> kind) {
    List<T> all = notebook.entries().stream().filter(kind::isInstance).map(kind::cast).toList();
    return all.isEmpty() ? Optional.empty() : Optional.of(dice.any(all));
  }
}
