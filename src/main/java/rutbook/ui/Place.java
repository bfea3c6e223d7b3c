package rutbook.ui;

import rutbook.notebook.EntryId;
import rutbook.notebook.SettingId;

/** Somewhere in the window that a page can ask the shell to go to. */
public sealed interface Place {
  /** All entries. */
  record Log() implements Place {}

  /** One session, open at its newest moto. */
  record Session(EntryId session) implements Place {}

  /** The session a setting was last moved in, or its place on the bike. */
  record OfSetting(SettingId setting) implements Place {}

  /** The bike, open at one of its parts. */
  record Bike(BikePart at) implements Place {}

  /** The parts of the Bike page, in the order of its keys. */
  enum BikePart {
    SETTINGS,
    FORK,
    SHOCK,
    STEERING,
    OIL,
    TORQUES,
    SERVICE,
    HISTORY
  }

  record Shortcuts() implements Place {}
}
