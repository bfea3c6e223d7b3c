package rutbook.notebook;

import java.util.Optional;

/** A lap time in milliseconds; a lap that the rider dropped says why. */
public record Lap(long millis, Optional<String> dropped) {
  public static final long LONGEST_MILLIS = 24L * 60 * 60 * 1000;

  public Lap {
    Checks.range("lap", millis, 1, LONGEST_MILLIS);
    dropped.ifPresent(why -> Checks.note("dropped", why));
  }

  public static Lap of(long millis) {
    return new Lap(millis, Optional.empty());
  }

  public boolean counts() {
    return dropped.isEmpty();
  }
}
