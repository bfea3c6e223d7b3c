package rutbook.ui.fx;

import java.util.Optional;
import java.util.function.Supplier;

/** Something that is made when it is first wanted, and then stays. */
public final class Once<T> {
  private final Supplier<T> making;
  private Optional<T> made = Optional.empty();

  public Once(Supplier<T> making) {
    this.making = making;
  }

  public T get() {
    if (made.isEmpty()) {
      made = Optional.of(making.get());
    }
    return made.get();
  }
}
