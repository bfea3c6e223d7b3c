package rutbook.ui;

import java.nio.file.Path;
import java.util.function.Consumer;
import rutbook.notebook.BikeId;
import rutbook.notebook.Notebook;
import rutbook.rebuild.Plan;

/**
 * What the window asks of whoever puts sheets for the bench on paper. Calls return at once; answers
 * come on the window's thread. The program, not the window, knows paper and disk.
 */
public interface Printing {
  /** What can be put on paper. */
  sealed interface Sheet {
    BikeId bike();

    Plan plan();

    /** Every step of a rebuild with empty boxes, for the day when no screen is near. */
    record Work(BikeId bike, Plan plan) implements Sheet {}

    /** What goes to the shop with a shock, with boxes for what the shop sets. */
    record Shop(BikeId bike, Plan plan) implements Sheet {}
  }

  /** What kind of file it is printed from. */
  enum Form {
    PDF,
    HTML
  }

  /** How it went. */
  sealed interface Printed {
    /** It lies there, and the system's viewer was asked to show it. */
    record Shown(Path path) implements Printed {}

    /** It lies there, and no viewer was found to show it. */
    record Kept(Path path) implements Printed {}

    /** It was not made; what happened, as a sentence. */
    record Refused(String sentence) implements Printed {}
  }

  /** Makes a sheet in a file of its own beside the notebook; it replaces none. */
  void print(Notebook notebook, Sheet sheet, Form form, Consumer<Printed> answer);
}
