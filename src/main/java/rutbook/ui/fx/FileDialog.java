package rutbook.ui.fx;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
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
    return chosen(chooser.showOpenDialog(owner));
  }

  /**
   * A file to be made; empty when the rider thought better of it. The system asks before a file
   * that is there is chosen: where a name without the ending becomes that of such a file, the
   * dialog comes once more with the whole name, so that it asks.
   *
   * @param ending added to a name that does not have it
   * @param there whether a file is there
   */
  public Optional<Path> toSave(String ending, Predicate<Path> there) {
    return toSave(ending, there, () -> chosen(chooser.showSaveDialog(owner)), this::offer);
  }

  private static Optional<Path> chosen(File file) {
    return Optional.ofNullable(file).map(File::toPath);
  }

  private void offer(Path whole) {
    chooser.setInitialDirectory(whole.getParent().toFile());
    named(whole.getFileName().toString());
  }

  static Optional<Path> toSave(
      String ending, Predicate<Path> there, Supplier<Optional<Path>> ask, Consumer<Path> offer) {
    Optional<Path> chosen = ask.get();
    while (chosen.isPresent() && !name(chosen.get()).endsWith(ending)) {
      Path whole = chosen.get().resolveSibling(name(chosen.get()) + ending);
      if (!there.test(whole)) {
        return Optional.of(whole);
      }
      offer.accept(whole);
      chosen = ask.get();
    }
    return chosen;
  }

  private static String name(Path path) {
    return path.getFileName().toString();
  }
}
