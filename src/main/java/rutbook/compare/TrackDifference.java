package rutbook.compare;

import java.util.Optional;
import rutbook.notebook.Setting;

/**
 * One setting at two tracks over all their sessions.
 *
 * @param first empty when it is not known in any session there
 * @param beyond sessions at the second that lie on its side of the first's median
 * @param chance that a split so uneven would come by chance, 0 to 1
 * @param withoutDrift empty when it cannot be told
 */
public record TrackDifference(
    Setting setting,
    Optional<Spread> first,
    Optional<Spread> second,
    Verdict verdict,
    int beyond,
    double chance,
    Optional<WithoutDrift> withoutDrift) {
  /** What the sessions say. */
  public enum Verdict {
    /** Every session of both tracks had the same. */
    SAME,
    /** Less than one in twenty by chance, and not explained by drift. */
    CONSISTENT,
    /** Would be consistent, but drift explains it as well. */
    DRIFT,
    /** Could well be chance. */
    CHANCE,
    /** So few sessions that even a clean split proves nothing. */
    TOO_FEW
  }
}
