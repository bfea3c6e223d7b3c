package rutbook.rebuild;

import java.time.LocalDate;
import java.util.Optional;
import rutbook.notebook.Due;
import rutbook.notebook.ServiceItem;

/**
 * One service item: hours since it was done, how it stands, and the day it falls due at the rider's
 * own pace.
 *
 * @param everDone whether the notebook says when it was done; otherwise hours count from the first
 *     meter reading
 * @param fade what the rider's own ratings say of it; empty where there is too little of them
 * @param left hours left of the interval; below zero when past it
 */
public record ServiceLine(
    ServiceItem item,
    double hoursSince,
    double left,
    boolean everDone,
    Due due,
    Optional<LocalDate> forecast,
    Optional<Fade> fade) {}
