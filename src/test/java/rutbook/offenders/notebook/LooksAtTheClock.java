package rutbook.offenders.notebook;

import java.time.LocalDate;

/** The clock outside app. */
final class LooksAtTheClock {
  private LooksAtTheClock() {}

  static LocalDate today() {
    return LocalDate.now();
  }
}
