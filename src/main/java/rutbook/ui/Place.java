package rutbook.ui;

import java.util.Optional;
import rutbook.imports.Grid;
import rutbook.notebook.EntryId;
import rutbook.notebook.MotoId;
import rutbook.notebook.SettingId;
import rutbook.notebook.StepId;

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

  /** Which one setting to change next. */
  record Next() implements Place {}

  /** Two setups, motos, sessions or tracks side by side. */
  record Compare() implements Place {}

  /** Rebuilds, the way back to the baseline, and what falls due. */
  record Rebuild() implements Place {}

  /** A changed or reset hour meter, on the board of what falls due. */
  record Meter() implements Place {}

  /** The plan of one rebuild. */
  record Job(EntryId rebuild) implements Place {}

  /** A printed work sheet of a rebuild that was written on, entered in one go. */
  record Paper(EntryId rebuild) implements Place {}

  /** One step of a rebuild at the bench; without one, the first that is open. */
  record Bench(EntryId rebuild, Optional<StepId> step) implements Place {}

  /** What goes to the coach and comes back; riders of a coach. */
  record Coach() implements Place {}

  /** Choosing what is handed over. */
  record HandOver() implements Place {}

  /** A file that came back from the coach. */
  record TakeBack(OutsideFiles.Opened file) implements Place {}

  /** A file that another rider handed over to the coach who sits here. */
  record Guest(OutsideFiles.Opened file) implements Place {}

  /** Laps of a timing system, for one moto. */
  record ImportLaps(EntryId session, MotoId moto, Grid table) implements Place {}

  /** Setups of a spreadsheet, for the bike. */
  record ImportSetups(Grid table) implements Place {}

  /** All keys on one sheet, over the page. */
  record Shortcuts() implements Place {}

  /** Help for the page that is shown, over it. */
  record Help() implements Place {}
}
