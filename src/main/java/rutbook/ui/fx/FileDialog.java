package rutbook.ui.fx;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
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

  /**
   * A file to be made; empty when the rider thought better of it. The system asks before a file
   * that is there is chosen: where a name without the ending becomes that of such a file, the
   * dialog comes once more with the whole name, so that it asks.
   *
   * @param ending added to a name that does not have it
   */
  public Optional<Path> toSave(String ending) {
    return toSave(ending, () -> chooser.showSaveDialog(owner), this::offer);
  }

  private void offer(File whole) {
    chooser.setInitialDirectory(whole.getParentFile());
    chooser.setInitialFileName(whole.getName());
  }

  static Optional<Path> toSave(String ending, Supplier<File> ask, Consumer<File> offer) {
    File chosen = ask.get();
    while (chosen != null && !chosen.getName().endsWith(ending)) {
      File whole = new File(chosen.getParentFile(), chosen.getName() + ending);
      if (!whole.exists()) {
        return Optional.of(whole.toPath());
      }
      offer.accept(whole);
      chosen = ask.get();
    }
    return Optional.ofNullable(chosen).map(File::toPath);
  }
}
