package rutbook.share;

import java.util.Optional;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;

/**
 * A proposal that came back, beside what was handed over and what is on the bike now.
 *
 * @param setting as today's sheet has it, or the last one that had it; empty when none ever had
 * @param handedOver by the rider's own record, never by the file; empty when it is not in there
 * @param now empty when nothing is noted of the setting
 * @param target where the rider would set it: the proposal, or the limit that holds it; empty when
 *     it cannot be followed
 * @param held why it cannot be followed to the end: the limit in today's sheet
 */
public record Returned(
    Suggested suggested,
    Optional<Setting> setting,
    Optional<Reading> handedOver,
    Optional<Reading> now,
    Standing standing,
    Optional<Reading> target,
    Optional<NotebookException> held) {

  public SettingId id() {
    return suggested.setting();
  }

  /** Whether the setting was moved since it was handed over. */
  public boolean movedMeanwhile() {
    return handedOver.isPresent() && now.isPresent() && !handedOver.get().sameAs(now.get());
  }
}
