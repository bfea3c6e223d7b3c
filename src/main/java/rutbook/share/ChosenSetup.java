package rutbook.share;

import java.time.LocalDate;
import java.util.Optional;
import rutbook.notebook.Checks;
import rutbook.notebook.EntryId;
import rutbook.notebook.MotoId;
import rutbook.notebook.Setup;

/**
 * A setup that goes along, with what it was.
 *
 * @param sheetFrom the first day of the sheet that it is read against
 * @param session the session of the file that it belongs to, if any
 * @param moto which moto of that session; empty for the setup it was left with
 */
public record ChosenSetup(
    What what,
    LocalDate day,
    LocalDate sheetFrom,
    Setup setup,
    Optional<EntryId> session,
    Optional<MotoId> moto) {

  /** What a setup was when it was chosen. */
  public enum What {
    NOW,
    BASELINE,
    SESSION,
    MOTO
  }

  public ChosenSetup {
    Checks.day(day);
    Checks.day(sheetFrom);
  }

  static ChosenSetup notRidden(What what, LocalDate day, LocalDate sheetFrom, Setup setup) {
    return new ChosenSetup(what, day, sheetFrom, setup, Optional.empty(), Optional.empty());
  }
}
