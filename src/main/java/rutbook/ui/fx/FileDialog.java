package rutbook.ui.fx;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks for the name of a file; only here are files named the toolkit's way. */
public final class FileDialog {
  private final Window owner;
  private final FileChooser chooser = new FileChooser();

  /**
   * @param kind what the files are called, for people
   * @param pattern such as {@code *.rutbook}
   * @param folder where the dialog begins, if that is there
   */
  public FileDialog(Window owner, String kind, String pattern, Optional<Path> folder) {
    this.owner = owner;
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(kind, pattern));
    folder.map(Path::toFile).ifPresent(chooser::setInitialDirectory);
  }

  /** Files of another kind too. */
  public FileDialog or(String kind, String pattern) {
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(kind, pattern));
    return this;
  }

  /** The name that is offered for a file to be made. */
  public FileDialog named(String name) {
    chooser.setInitialFileName(name);
    return this;
  }

  /** A file that is there; empty when the rider thought better of it. */
  public Optional<Path> toOpen() {
    return Optional.ofNullable(chooser.showOpenDialog(owner)).map(File::toPath);
  }

  /** A file to be made; empty when the rider thought better of it. */
  public Optional<Path> toSave() {
    return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
  }
}
