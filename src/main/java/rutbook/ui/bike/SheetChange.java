package rutbook.ui.bike;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import rutbook.notebook.Chamber;
import rutbook.notebook.ForkParts;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;

/** What of a sheet changes what older entries mean, so that the rider is asked which sheet. */
enum SheetChange {
  /** Stops or limits of a fill. */
  LIMITS,
  /** How a setting is counted or measured, or which leg it is in. */
  MEANING,
  /** A setting more. */
  ADDED,
  /** A setting fewer. */
  REMOVED,
  VALVING,
  /** Another fork: open bath, pressurised cartridge, air. */
  FORK;

  /** What changed between two sheets; empty when the sheet was only completed or put right. */
  static Set<SheetChange> between(Sheet before, Sheet after) {
    Set<SheetChange> changes = EnumSet.noneOf(SheetChange.class);
    for (Setting setting : before.settings()) {
      Optional<Setting> now = after.setting(setting.id());
      if (now.isEmpty()) {
        changes.add(REMOVED);
      } else {
        addOf(changes, before, setting, after, now.get());
      }
    }
    if (after.settings().stream().anyMatch(each -> before.setting(each.id()).isEmpty())) {
      changes.add(ADDED);
    }
    for (Chamber chamber : before.chambers()) {
      after
          .chamber(chamber.id())
          .filter(now -> !now.limits().equals(chamber.limits()))
          .ifPresent(now -> changes.add(LIMITS));
    }
    ForkParts fork = before.parts().fork();
    if (fork.kind() != after.parts().fork().kind()) {
      changes.add(FORK);
    }
    if (changed(fork.valving(), after.parts().fork().valving())
        || changed(before.parts().shock().valving(), after.parts().shock().valving())) {
      changes.add(VALVING);
    }
    return changes;
  }

  private static void addOf(
      Set<SheetChange> changes, Sheet before, Setting was, Sheet after, Setting now) {
    boolean sameMeaning =
        was.dimension() == now.dimension()
            && was.carrier() == now.carrier()
            && was.scale().datum() == now.scale().datum();
    if (!sameMeaning) {
      changes.add(MEANING);
    } else if (!before.limits(was).equals(after.limits(now))) {
      changes.add(LIMITS);
    }
  }

  /** Valving noted for the first time was there before. */
  private static boolean changed(String before, String after) {
    return !before.isBlank() && !before.equals(after);
  }
}
