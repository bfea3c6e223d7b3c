package rutbook.notebook;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the steps of a rebuild say about the bike: a step that puts a setting replaces its reading;
 * what the shop left counts until then.
 */
public final class RebuildReadings {
  private RebuildReadings() {}

  /** A setup after what was entered, in whatever order that came. */
  public static Setup applied(Setup setup, List<StepDone> done) {
    return with(with(setup, done, StepId::found), done, StepId::placed);
  }

  private static Setup with(
      Setup setup, List<StepDone> done, Function<StepId, Optional<SettingId>> about) {
    Setup next = setup;
    for (StepDone each : done) {
      Optional<SettingId> setting = about.apply(each.step());
      Optional<Reading> reading = entered(each);
      if (setting.isPresent() && reading.isPresent()) {
        next = next.with(Placed.found(setting.get(), reading.get()));
      }
    }
    return next;
  }

  /** What was counted or measured at a step. */
  static Optional<Reading> entered(StepDone done) {
    Entered entered = done.entered();
    if (entered instanceof Entered.Counted counted) {
      return Optional.of(counted.reading());
    }
    return entered instanceof Entered.Measured measured
        ? Optional.of(measured.reading())
        : Optional.empty();
  }
}
