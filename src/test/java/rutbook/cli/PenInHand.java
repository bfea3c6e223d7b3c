package rutbook.cli;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import rutbook.edit.Ids;
import rutbook.notebook.Notebook;

/** A pen that writes into memory, on one day, with ids that can be foretold. */
final class PenInHand implements Pen {
  private final Map<String, Notebook> notebooks;
  private final Map<String, byte[]> files = new HashMap<>();
  private final LocalDate today;
  private int count;

  PenInHand(Map<String, Notebook> notebooks, LocalDate today) {
    this.notebooks = notebooks;
    this.today = today;
  }

  PenInHand file(String name, byte[] bytes) {
    files.put(name, bytes);
    return this;
  }

  @Override
  public Notebook change(String file, UnaryOperator<Notebook> change) {
    Notebook after = change.apply(notebooks.get(file));
    notebooks.put(file, after);
    return after;
  }

  @Override
  public byte[] bytes(String file) {
    return files.get(file);
  }

  @Override
  public LocalDate today() {
    return today;
  }

  @Override
  public Ids ids() {
    return () -> "new-" + ++count;
  }
}
