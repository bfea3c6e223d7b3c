package rutbook.json;

import java.io.IOException;
import java.util.Optional;

/** Something that is there; what is not there is left out by the field. */
record PresentShape<T>(Shape<T> shape) implements Shape<Optional<T>> {
  @Override
  public Optional<T> read(In in) throws IOException {
    return Optional.of(shape.read(in));
  }

  @Override
  public void write(Optional<T> value, Out out) throws IOException {
    shape.write(value.orElseThrow(), out);
  }
}
