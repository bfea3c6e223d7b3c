package rutbook.notebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The bike's data from a day on. A new spring, new valving or a narrower limit starts a new sheet;
 * older entries stay with theirs.
 */
public record Sheet(
    LocalDate from,
    String reason,
    List<Setting> settings,
    List<Chamber> chambers,
    Parts parts,
    List<Tightening> torques,
    List<ServiceItem> services,
    Optional<Side> pinchedFirst) {
  public Sheet {
    Checks.day(from);
    reason = Checks.note("reason", reason);
    settings = Checks.unique("setting", settings, Setting::id);
    chambers = Checks.unique("chamber", chambers, Chamber::id);
    torques = Checks.list("torque", torques);
    services = Checks.unique("service", services, ServiceItem::id);
    for (Setting setting : settings) {
      checkFill(setting, chambers);
    }
  }

  private static void checkFill(Setting setting, List<Chamber> chambers) {
    if (setting.scale().limits() instanceof Limits.Fill fill) {
      Chamber chamber =
          chambers.stream()
              .filter(each -> each.id().equals(fill.chamber()))
              .findFirst()
              .orElseThrow(
                  () -> new NotebookException(Fault.UNKNOWN_ID, "chamber", fill.chamber()));
      Checks.dimension(
          setting.name(), setting.scale().step(), chamber.limits().least().dimension());
    }
  }

  public Optional<Setting> setting(SettingId id) {
    for (Setting setting : settings) {
      if (setting.id().equals(id)) {
        return Optional.of(setting);
      }
    }
    return Optional.empty();
  }

  /** The settings of a role, in the order of the sheet. */
  public List<Setting> settings(Role role) {
    return settings.stream().filter(setting -> setting.role() == role).toList();
  }

  public Optional<Chamber> chamber(ChamberId id) {
    for (Chamber chamber : chambers) {
      if (chamber.id().equals(id)) {
        return Optional.of(chamber);
      }
    }
    return Optional.empty();
  }

  /** The chamber that a setting fills, if it is a fill. */
  public Optional<Chamber> chamber(Setting setting) {
    return setting.scale().limits() instanceof Limits.Fill fill
        ? chamber(fill.chamber())
        : Optional.empty();
  }

  /** The limits that bind a setting: its stops, or those of its chamber. */
  public Range limits(Setting setting) {
    return setting.scale().limits() instanceof Limits.Stops stops
        ? stops.range()
        : chamber(setting).orElseThrow().limits();
  }

  public List<Tightening> torques(Fastener fastener) {
    return torques.stream().filter(torque -> torque.fastener() == fastener).toList();
  }

  public Sheet with(LocalDate newFrom, String newReason) {
    return new Sheet(
        newFrom, newReason, settings, chambers, parts, torques, services, pinchedFirst);
  }

  public Sheet withSettings(List<Setting> newSettings) {
    return new Sheet(from, reason, newSettings, chambers, parts, torques, services, pinchedFirst);
  }

  public Sheet withChambers(List<Chamber> newChambers) {
    return new Sheet(from, reason, settings, newChambers, parts, torques, services, pinchedFirst);
  }

  public Sheet withParts(Parts newParts) {
    return new Sheet(from, reason, settings, chambers, newParts, torques, services, pinchedFirst);
  }

  public Sheet withTorques(List<Tightening> newTorques) {
    return new Sheet(from, reason, settings, chambers, parts, newTorques, services, pinchedFirst);
  }

  public Sheet withServices(List<ServiceItem> newServices) {
    return new Sheet(from, reason, settings, chambers, parts, torques, newServices, pinchedFirst);
  }

  public Sheet withPinchedFirst(Optional<Side> side) {
    return new Sheet(from, reason, settings, chambers, parts, torques, services, side);
  }
}
