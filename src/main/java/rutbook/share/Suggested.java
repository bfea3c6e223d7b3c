package rutbook.share;

import rutbook.notebook.Checks;
import rutbook.notebook.Fault;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Reading;
import rutbook.notebook.SettingId;

/**
 * One setting that the coach would move, to an absolute target inside the limits of the rider's
 * sheet, with the reason.
 */
public record Suggested(SettingId setting, Reading to, String reason) {
  public Suggested {
    if (!to.isKnown()) {
      throw new NotebookException(Fault.EMPTY, "proposal");
    }
    reason = Checks.note("reason", reason);
  }
}
