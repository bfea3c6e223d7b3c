package rutbook.rebuild;

import java.util.Optional;
import rutbook.notebook.Setting;
import rutbook.notebook.Side;

/** What a step is about: a setting, a leg or side, both or neither. */
public record Subject(Optional<Setting> setting, Optional<Side> leg) {
  public static final Subject BIKE = new Subject(Optional.empty(), Optional.empty());

  public static Subject of(Setting setting) {
    return new Subject(Optional.of(setting), Optional.empty());
  }

  public static Subject of(Side leg) {
    return new Subject(Optional.empty(), Optional.of(leg));
  }

  public static Subject of(Setting setting, Side leg) {
    return new Subject(Optional.of(setting), Optional.of(leg));
  }
}
