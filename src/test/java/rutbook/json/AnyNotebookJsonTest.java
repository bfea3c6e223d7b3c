package rutbook.json;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import rutbook.notebook.Notebook;
import rutbook.notebook.Notebooks;

/** Bikes of every make-up, in writing and back. */
class AnyNotebookJsonTest {
  @Property(tries = 80, seed = "71")
  void anyNotebookIsReadBackAsItWasWritten(@ForAll(supplier = Notebooks.class) Notebook notebook) {
    readBack(notebook);
  }

  @Tag("long")
  @Property(tries = 5_000, seed = "72")
  void anyNotebookIsReadBackAsItWasWrittenAtLength(
      @ForAll(supplier = Notebooks.class) Notebook notebook) {
    readBack(notebook);
  }

  private static void readBack(Notebook notebook) {
    byte[] bytes = NotebookJson.write(notebook);
    Notebook again = NotebookJson.read(bytes);
    assertThat(again).isEqualTo(notebook);
    assertThat(NotebookJson.write(again)).isEqualTo(bytes);
  }
}
