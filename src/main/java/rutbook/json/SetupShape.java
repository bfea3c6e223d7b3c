package rutbook.json;

import java.io.IOException;
import java.util.List;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setup;

/** A setup is the list of its readings. */
final class SetupShape implements Shape<Setup> {
  private final ListShape<Placed> placed = new ListShape<>(new PlacedShape());

  ListShape<Placed> list() {
    return placed;
  }

  @Override
  public Setup read(In in) throws IOException {
    Setup before = in.repeats().setup();
    List<Placed> readings = placed.read(in);
    if (isShared(readings, before.placed())) {
      return before;
    }
    try {
      Setup setup = new Setup(readings);
      in.repeats().setup(setup);
      return setup;
    } catch (NotebookException fault) {
      throw in.fault(Kind.NOTEBOOK, "", Expected.NOTHING, List.of(), fault);
    }
  }

  /** Puts the same objects in place of readings that did not change; whether all did not. */
  private static boolean isShared(List<Placed> readings, List<Placed> before) {
    boolean all = readings.size() == before.size();
    for (int i = 0; i < Math.min(readings.size(), before.size()); i++) {
      if (isSame(readings.get(i), before.get(i))) {
        readings.set(i, before.get(i));
      } else {
        all = false;
      }
    }
    return all;
  }

  /** By identity, since what was read once is one object; legs are put together anew. */
  private static boolean isSame(Placed one, Placed other) {
    return one.setting() == other.setting()
        && one.how() == other.how()
        && isSame(one.reading(), other.reading());
  }

  private static boolean isSame(Reading one, Reading other) {
    return one == other
        || one instanceof Reading.Pair legs
            && other instanceof Reading.Pair others
            && legs.left() == others.left()
            && legs.right() == others.right();
  }

  @Override
  public void write(Setup setup, Out out) throws IOException {
    placed.write(setup.placed(), out);
  }
}
