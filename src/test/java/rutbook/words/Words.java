package rutbook.words;

import rutbook.notebook.Bench;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.units.Amount;

/** Settings of the bench's bike, for the tests of this package. */
final class Words {
  static final Setting COMPRESSION = setting(Bench.FORK_COMPRESSION);
  static final Setting REBOUND = setting(Bench.FORK_REBOUND);
  static final Setting OIL = setting(Bench.FORK_OIL);
  static final Setting TUBE = setting(Bench.TUBE);
  static final Setting HIGH_SPEED = setting(Bench.HIGH_SPEED);
  static final Setting SHOCK_REBOUND = setting(Bench.SHOCK_REBOUND);

  private Words() {}

  static Setting setting(SettingId id) {
    return Bench.sheet().setting(id).orElseThrow();
  }

  static Amount clicks(long number) {
    return Bench.clicks(number);
  }
}
