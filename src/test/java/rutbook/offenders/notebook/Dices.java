package rutbook.offenders.notebook;

import java.util.UUID;

/** Chance outside app. */
final class Dices {
  private Dices() {}

  static UUID id() {
    return UUID.randomUUID();
  }
}
