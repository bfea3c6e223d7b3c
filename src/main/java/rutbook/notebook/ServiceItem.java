package rutbook.notebook;

import java.util.Optional;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** Something done on hours; the interval is the manual's, or common practice and says so. */
public record ServiceItem(
    ServiceId id, String name, End end, ServiceKind kind, Amount interval, boolean commonPractice) {
  public ServiceItem {
    name = Checks.name("service", name);
    Checks.positive("interval", Optional.of(interval), Dimension.DURATION);
  }
}
