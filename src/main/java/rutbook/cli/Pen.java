package rutbook.cli;

import java.time.LocalDate;
import java.util.function.UnaryOperator;
import rutbook.edit.Ids;
import rutbook.notebook.Notebook;

/** What a command needs that writes into a notebook, or reads a file that is none. */
public interface Pen {
  /**
   * Changes a notebook on the disk: locked against a second program, with a backup, whole or not at
   * all. A change that gives the same notebook writes nothing.
   *
   * @param file as it was typed
   * @return the notebook as it is on the disk then
   * @throws Refusal when it is open elsewhere, cannot be read or cannot be written
   * @throws rutbook.notebook.NotebookException when the change would break a bound
   */
  Notebook change(String file, UnaryOperator<Notebook> change);

  /**
   * The bytes of any other file.
   *
   * @throws Refusal when it cannot be read
   */
  byte[] bytes(String file);

  LocalDate today();

  Ids ids();
}
