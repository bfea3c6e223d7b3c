package rutbook.notebook;

import java.util.Optional;

/**
 * What the steps of a rebuild say about the bike: a step that puts a setting replaces its reading.
 */
final class RebuildReadings {
  private RebuildReadings() {}

  static Setup applied(Setup setup, Entry.RebuildJob rebuild) {
    Setup next = setup;
    for (StepDone done : rebuild.done()) {
      Optional<SettingId> setting = done.step().placed();
      Optional<Reading> reading = entered(done);
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
