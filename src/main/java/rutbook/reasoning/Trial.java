package rutbook.reasoning;

import java.time.LocalDate;
import rutbook.notebook.EntryId;
import rutbook.notebook.MotoId;

/**
 * Two consecutive motos of a day between which a setting moved, as a person can look them up.
 *
 * @param session where they were ridden
 * @param before the moto before the change
 * @param after the moto after it
 * @param doses by which the setting moved, towards more; never 0
 * @param severityBefore what was written of the complaint, 0 to 5
 * @param severityAfter what was written after the change
 * @param clean whether nothing else was changed between the two
 */
public record Trial(
    EntryId session,
    LocalDate day,
    MotoId before,
    MotoId after,
    double doses,
    int severityBefore,
    int severityAfter,
    boolean clean) {}
