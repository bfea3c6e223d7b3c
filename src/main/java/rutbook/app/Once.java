package rutbook.app;

import java.util.function.Supplier;

/** What is made when it is first asked for, on whatever thread, and then kept. */
final class Once<T> implements Supplier<T> {
  private final Supplier<T> making;
  private T made;

  Once(Supplier<T> making) {
    this.making = making;
  }

  @Override
  public synchronized T get() {
    if (made == null) {
      made = making.get();
    }
    return made;
  }
}
