package rutbook.rebuild;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Feel;
import rutbook.notebook.Moto;
import rutbook.notebook.Placed;
import rutbook.notebook.Renewed;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.units.Amount;

/**
 * What a suspension shop needs to know of a shock: rider's weight in gear, hours since its oil,
 * complaints of the last motos at the rear (worst first), the rear's baseline, and what is wanted.
 */
public record ShopSheet(
    Optional<Amount> weightInGear,
    OptionalDouble hoursSinceOil,
    List<Feel> complaints,
    List<Placed> baseline,
    Optional<Amount> raceSag,
    Optional<Amount> freeSag,
    Set<Renewed> wanted) {
  /** Complaints are taken from so many of the last motos. */
  static final int MOTOS = 6;

  public ShopSheet {
    complaints = List.copyOf(complaints);
    baseline = List.copyOf(baseline);
    wanted = Set.copyOf(wanted);
  }

  public static ShopSheet of(Shelf shelf, Timeline timeline, PlanFrom from) {
    List<Entry.Session> sessions = timeline.sessions();
    Optional<Amount> weight = Optional.empty();
    if (!sessions.isEmpty()) {
      Entry.Session last = sessions.get(sessions.size() - 1);
      RiderId riderId = last.rider();
      weight = shelf.rider(riderId).flatMap((Rider rider) -> rider.weightOn(last.day()));
    }
    List<Placed> rear =
        from.baseline().setup().placed().stream()
            .filter(
                placed ->
                    from.sheet()
                        .setting(placed.setting())
                        .map(setting -> setting.role().end() == End.REAR)
                        .orElse(false))
            .toList();
    return new ShopSheet(
        weight,
        hoursSinceOil(timeline, from),
        complaints(sessions),
        rear,
        from.baseline().raceSag(),
        from.baseline().freeSag(),
        from.job().renewed());
  }

  private static OptionalDouble hoursSinceOil(Timeline timeline, PlanFrom from) {
    return from.sheet().services().stream()
        .filter((ServiceItem item) -> item.kind() == ServiceKind.SHOCK_OIL)
        .mapToDouble(item -> timeline.hours().since(item))
        .findFirst();
  }

  /** The worst rating of each symptom at the rear, those that were there at all. */
  private static List<Feel> complaints(List<Entry.Session> sessions) {
    List<Moto> motos = new ArrayList<>();
    sessions.forEach(session -> motos.addAll(session.motos()));
    Map<String, Feel> worst = new TreeMap<>();
    for (Moto moto : motos.subList(Math.max(0, motos.size() - MOTOS), motos.size())) {
      for (Feel feel : moto.report().feel()) {
        if (feel.end() == End.REAR && feel.severity() > 0) {
          worst.merge(feel.key().toString(), feel, (a, b) -> a.severity() >= b.severity() ? a : b);
        }
      }
    }
    return worst.values().stream()
        .sorted(Comparator.comparingInt(Feel::severity).reversed())
        .collect(Collectors.toList());
  }
}
