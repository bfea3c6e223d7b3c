package rutbook.file;

import java.util.Optional;
import java.util.function.Function;

/** What came of an attempt on the disk: the thing wanted, or the fault that prevented it. */
public sealed interface Outcome<T> {

  /** It was done, and this is the result. */
  record Done<T>(T value) implements Outcome<T> {}

  /** It was not done; nothing that was there before was harmed. */
  record Refused<T>(FileFault why) implements Outcome<T> {}

  static <T> Outcome<T> done(T result) {
    return new Done<>(result);
  }

  static <T> Outcome<T> refused(FileFault reason) {
    return new Refused<>(reason);
  }

  /** The result, or empty when refused. */
  default Optional<T> result() {
    return fold(Optional::of, reason -> Optional.empty());
  }

  /** The fault, or empty when done. */
  default Optional<FileFault> fault() {
    return fold(result -> Optional.empty(), Optional::of);
  }

  /** One answer from either case. */
  default <R> R fold(
      Function<? super T, ? extends R> done, Function<FileFault, ? extends R> refused) {
    if (this instanceof Done<T> it) {
      return done.apply(it.value);
    }
    return refused.apply(((Refused<T>) this).why);
  }

  /** The same outcome with the result turned into something else. */
  default <R> Outcome<R> map(Function<? super T, ? extends R> change) {
    return fold(result -> done(change.apply(result)), Outcome::refused);
  }

  /** The next attempt on the result of this one. */
  default <R> Outcome<R> then(Function<? super T, Outcome<R>> next) {
    return fold(next, Outcome::refused);
  }
}
