package rutbook.units;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Every way to write each unit, without regard to case, spaces, points, hyphens and carets. */
final class Spellings {
  private static final int LONGEST = 40;
  private static final Pattern SKIPPED = Pattern.compile("[\\h\\s·⋅∙*.^\\-]+");

  private static final Map<String, Set<Unit>> UNITS = index();

  private Spellings() {}

  private static Map<String, Set<Unit>> index() {
    Map<String, Set<Unit>> units = new HashMap<>();
    for (Unit unit : Unit.all()) {
      Stream.concat(Stream.of(unit.symbol()), unit.alsoTyped().stream())
          .forEach(
              written ->
                  units.computeIfAbsent(key(written), key -> new LinkedHashSet<>()).add(unit));
    }
    return units;
  }

  /** Letters in one case and form: {@code cm³} is {@code cm3}, {@code ft-lb} is {@code ftlb}. */
  static String key(String written) {
    String plain = Normalizer.normalize(written, Normalizer.Form.NFKC);
    return SKIPPED.matcher(plain).replaceAll("").toLowerCase(Locale.ROOT);
  }

  /** The unit meant in a field of this unit, which goes first where a spelling has two meanings. */
  static Optional<Unit> unit(String written, Unit field) {
    Set<Unit> found = found(written);
    if (found.contains(field)) {
      return Optional.of(field);
    }
    return found.stream().filter(unit -> unit.dimension() == field.dimension()).findFirst();
  }

  /** Whether it is a unit of any kind. */
  static boolean isKnown(String written) {
    return !found(written).isEmpty();
  }

  private static Set<Unit> found(String written) {
    return written.length() > LONGEST ? Set.of() : UNITS.getOrDefault(key(written), Set.of());
  }
}
