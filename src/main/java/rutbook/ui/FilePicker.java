package rutbook.ui;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the rider for the name of a file. */
public interface FilePicker {
  /** What is asked for. */
  enum Kind {
    SETUP(".setup.json"),
    TABLE(".csv"),
    PICTURE(".png");

    private final String ending;

    Kind(String ending) {
      this.ending = ending;
    }

    public String ending() {
      return ending;
    }
  }

  /** A file that is there; empty when the rider thought better of it. */
  Optional<Path> toOpen(Kind kind);

  /** A file to be made, with the ending of its kind; empty when the rider thought better of it. */
  Optional<Path> toSave(Kind kind, String name);
}
