package rutbook.notebook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Unit;

/** Seeded chance in the words of the notebook: the same seed throws the same values. */
public final class Dice {
  private static final List<String> NAMES =
      List.of(
          "Größe ½",
          "日本の道",
          "עברית ראשון",
          "مسار",
          "e\u0301te\u0301",
          "👩‍🔧 \uD83C\uDFCD",
          "O’Ring & Söhne",
          "{0} 'quoted' \"twice\" \\ %s",
          "-",
          "n".repeat(120));
  private static final List<String> NOTES =
      List.of("", "", "dry line came late", "two\nlines\tand\u0007 a bell", "\u202Eturned", "\0");

  private final Random random;
  private int number;

  public Dice(Random random) {
    this.random = random;
  }

  public Random random() {
    return random;
  }

  /** From 0 to one less than the given number. */
  public int below(int number) {
    return random.nextInt(number);
  }

  public int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  /** True once in so many throws. */
  public boolean once(int in) {
    return random.nextInt(in) == 0;
  }

  public <T> T any(List<T> things) {
    return things.get(random.nextInt(things.size()));
  }

  public <E extends Enum<E>> E any(Class<E> type) {
    return any(List.of(type.getEnumConstants()));
  }

  public <T> Optional<T> maybe(Supplier<T> thing) {
    return random.nextBoolean() ? Optional.of(thing.get()) : Optional.empty();
  }

  public <E extends Enum<E>> Set<E> some(Class<E> type) {
    Set<E> chosen = EnumSet.noneOf(type);
    for (E each : type.getEnumConstants()) {
      if (random.nextBoolean()) {
        chosen.add(each);
      }
    }
    return chosen;
  }

  public <T> List<T> times(int most, Supplier<T> thing) {
    List<T> things = new ArrayList<>();
    for (int i = below(most + 1); i > 0; i--) {
      things.add(thing.get());
    }
    return things;
  }

  /** Never the same twice from the same dice. */
  public String id(String kind) {
    number++;
    return kind + (once(5) ? ":" : "-") + Integer.toString(random.nextInt(1 << 24), 36) + number;
  }

  public String name() {
    return any(NAMES);
  }

  public String note() {
    return once(40) ? "long ".repeat(900) : any(NOTES);
  }

  public Amount of(Dimension dimension, int least, int most) {
    return Amount.of(between(least, most), any(Unit.of(dimension)));
  }

  /** A whole number of steps above the least, not beyond the most. */
  public Amount inside(Range limits, Amount step) {
    BigDecimal room = limits.most().minus(limits.least()).value();
    int steps = room.divideToIntegralValue(step.value()).intValue();
    BigDecimal up = step.value().multiply(BigDecimal.valueOf(below(steps + 1)));
    return limits.least().withValue(limits.least().value().add(up));
  }

  /** Anything that can be written down: inside or far outside, in any unit of its kind. */
  public Amount found(Dimension dimension) {
    List<Unit> units = Unit.of(dimension);
    String number =
        switch (below(8)) {
          case 0 -> "0";
          case 1 -> "-" + below(40);
          case 2 -> "100000";
          case 3 -> "0.000000001";
          case 4 -> "0.333333333333".substring(0, 3 + below(9));
          default -> between(0, 500) + "." + below(10);
        };
    return Amount.of(number, any(units));
  }

  /** A reading of a setting that somebody chose. */
  public Reading chosen(Sheet sheet, Setting setting) {
    Range limits = sheet.limits(setting);
    Supplier<Value> value = () -> Value.of(inside(limits, setting.scale().step()));
    return reading(setting, once(3) ? value : same(value.get()));
  }

  /** A reading of a setting that was found, some of it unknown. */
  public Reading found(Setting setting) {
    return reading(
        setting,
        () ->
            once(3)
                ? new Value.Unknown(any(WhyUnknown.class))
                : Value.of(found(setting.dimension())));
  }

  private static Supplier<Value> same(Value value) {
    return () -> value;
  }

  private static Reading reading(Setting setting, Supplier<Value> value) {
    return setting.carrier() == Carrier.PAIR
        ? new Reading.Pair(value.get(), value.get())
        : new Reading.One(value.get());
  }

  public Placed placed(Sheet sheet, Setting setting) {
    return once(4)
        ? Placed.found(setting.id(), found(setting))
        : Placed.set(setting.id(), chosen(sheet, setting));
  }

  public Setup setup(Sheet sheet) {
    return new Setup(sheet.settings().stream().map(setting -> placed(sheet, setting)).toList());
  }

  public List<Change> changes(Sheet sheet) {
    return sheet.settings().stream()
        .filter(setting -> once(5))
        .map(setting -> change(sheet, setting))
        .toList();
  }

  public Change change(Sheet sheet, Setting setting) {
    return new Change(
        setting.id(), chosen(sheet, setting), maybe(() -> new ProposalId(id("p"))), note());
  }
}
