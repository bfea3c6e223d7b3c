package rutbook.json;

import java.io.IOException;
import java.util.List;
import rutbook.json.JsonFault.Expected;
import rutbook.json.JsonFault.Kind;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Placed;
import rutbook.notebook.Setup;

/** A setup is the list of its readings. */
final class SetupShape implements Shape<Setup> {
  private final ListShape<Placed> placed = new ListShape<>(new PlacedShape());

  ListShape<Placed> list() {
    return placed;
  }

  @Override
  public Setup read(In in) throws IOException {
    List<Placed> readings = placed.read(in);
    try {
      return new Setup(readings);
    } catch (NotebookException fault) {
      throw in.fault(Kind.NOTEBOOK, "", Expected.NOTHING, List.of(), fault);
    }
  }

  @Override
  public void write(Setup setup, Out out) throws IOException {
    placed.write(setup.placed(), out);
  }
}
