package rutbook.units;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A unit of one {@link Dimension}, with its exact relation to the SI: {@code si = (value + offset)
 * * numerator / denominator}.
 *
 * <p>The factors come from the definitions (international yard and pound of 1959, standard gravity
 * 9.80665 m/s², US gallon of 231 cubic inches); none is rounded, so limits compare exactly.
 */
public sealed interface Unit
    permits ClickUnit,
        TurnUnit,
        Volume,
        Length,
        SpringRate,
        Pressure,
        Torque,
        Angle,
        Temperature,
        Mass,
        Duration,
        KinematicViscosity {

  /** The sign as printed and as written in the file, such as {@code mL} or {@code fl oz}. */
  String symbol();

  Dimension dimension();

  /** What people type for it besides the sign; compared without regard to case and spaces. */
  List<String> alsoTyped();

  BigDecimal numerator();

  BigDecimal denominator();

  /** Added to the value before scaling; zero for everything but temperatures. */
  default BigDecimal offset() {
    return BigDecimal.ZERO;
  }

  /** Every unit there is, in the order of the dimensions. */
  static List<Unit> all() {
    return AllUnits.LIST;
  }

  /** The unit with exactly this sign. */
  static Optional<Unit> ofSymbol(String symbol) {
    return Optional.ofNullable(AllUnits.BY_SYMBOL.get(symbol));
  }

  static List<Unit> of(Dimension dimension) {
    return all().stream().filter(unit -> unit.dimension() == dimension).toList();
  }
}

/** The units in one list, made once. */
final class AllUnits {
  static final List<Unit> LIST =
      Stream.of(
              ClickUnit.values(),
              TurnUnit.values(),
              Volume.values(),
              Length.values(),
              SpringRate.values(),
              Pressure.values(),
              Torque.values(),
              Angle.values(),
              Temperature.values(),
              Mass.values(),
              Duration.values(),
              KinematicViscosity.values())
          .flatMap(Arrays::stream)
          .map(Unit.class::cast)
          .toList();

  static final Map<String, Unit> BY_SYMBOL =
      LIST.stream().collect(Collectors.toUnmodifiableMap(Unit::symbol, Function.identity()));

  private AllUnits() {}
}
