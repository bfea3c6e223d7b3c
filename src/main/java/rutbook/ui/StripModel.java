package rutbook.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import rutbook.drawing.Ruler;
import rutbook.notebook.Bike;
import rutbook.notebook.Due;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Hours;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;
import rutbook.units.Display;
import rutbook.units.Duration;

/** What stands at the top of every page: the bike, its oil hours, and what is on it now. */
public record StripModel(
    Bike bike, Sheet sheet, double hours, List<Service> services, List<Item> items) {
  public record Service(String name, double hours, double interval, Due due) {}

  /** One setting with what is on the bike. */
  public record Item(Setting setting, Group group, Reading reading, Ruler ruler) {}

  /** Where a setting stands in the strip. */
  public enum Group {
    FORK,
    SHOCK,
    CHASSIS;

    public static Group of(Role role) {
      return switch (role) {
        case TUBE_ABOVE_CLAMP, AXLE_POSITION, TYRE_FRONT, TYRE_REAR, OTHER -> CHASSIS;
        default -> role.end() == End.FRONT ? FORK : SHOCK;
      };
    }
  }

  public StripModel {
    services = List.copyOf(services);
    items = List.copyOf(items);
  }

  public static StripModel of(Timeline timeline, Display display) {
    Bike bike = timeline.bike();
    Sheet sheet = bike.latestSheet();
    Hours hours = timeline.hours();
    return new StripModel(
        bike, sheet, hours.total(), services(sheet, hours), items(timeline, sheet, display));
  }

  private static List<Service> services(Sheet sheet, Hours hours) {
    List<Service> services = new ArrayList<>();
    for (ServiceItem item : sheet.services()) {
      if (item.kind() == ServiceKind.FORK_OIL || item.kind() == ServiceKind.SHOCK_OIL) {
        double since = hours.since(item);
        double interval = item.interval().doubleIn(Duration.HOUR);
        services.add(new Service(item.name(), since, interval, Due.of(since, interval)));
      }
    }
    return services;
  }

  private static List<Item> items(Timeline timeline, Sheet sheet, Display display) {
    Setup now = timeline.now();
    Optional<Setup> baseline = timeline.baseline().map(Entry.Baseline::setup);
    List<Item> items = new ArrayList<>();
    for (Group group : Group.values()) {
      for (Setting setting : sheet.settings()) {
        if (Group.of(setting.role()) == group) {
          items.add(item(sheet, setting, group, now, baseline, display));
        }
      }
    }
    return items;
  }

  private static Item item(
      Sheet sheet,
      Setting setting,
      Group group,
      Setup now,
      Optional<Setup> baseline,
      Display display) {
    Reading reading =
        now.reading(setting.id())
            .orElseGet(
                () -> Reading.unknown(setting.carrier(), rutbook.notebook.WhyUnknown.NOT_NOTED));
    Ruler ruler = Ruler.of(sheet, setting, reading).in(display);
    Optional<Reading> base = baseline.flatMap(setup -> setup.reading(setting.id()));
    return new Item(setting, group, reading, base.map(ruler::withBaseline).orElse(ruler));
  }

  /**
   * What is shown while folded into so much room: legs that differ first, then clickers, then what
   * is moved at the track, then the rest, as long as the next one fits; always in the order of the
   * strip.
   *
   * @param width of an item, in the measure of the room
   */
  public List<Item> folded(double room, ToDoubleFunction<Item> width) {
    Set<Item> kept = new HashSet<>();
    double left = room;
    for (Item item : items.stream().sorted(Comparator.comparingInt(StripModel::rank)).toList()) {
      left -= width.applyAsDouble(item);
      if (left < 0) {
        break;
      }
      kept.add(item);
    }
    return items.stream().filter(kept::contains).toList();
  }

  private static int rank(Item item) {
    Role role = item.setting().role();
    if (item.reading().legsDiffer()) {
      return 0;
    }
    return switch (role) {
      case FORK_COMPRESSION, FORK_REBOUND, SHOCK_LOW_SPEED, SHOCK_HIGH_SPEED, SHOCK_REBOUND -> 1;
      case FORK_HIGH_SPEED_COMPRESSION, TUBE_ABOVE_CLAMP, SHOCK_PRELOAD -> 2;
      case FORK_OIL, FORK_AIR -> 3;
      default -> 4;
    };
  }
}
