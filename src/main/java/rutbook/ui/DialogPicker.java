package rutbook.ui;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javafx.stage.Window;
import rutbook.ui.fx.FileDialog;
import rutbook.words.WindowWords;

/** Asks for the name of a file in the dialog of the system. */
public final class DialogPicker implements FilePicker {
  private final Window owner;
  private final WindowWords words;
  private final Supplier<Optional<Path>> folder;
  private final Predicate<Path> there;

  /**
   * @param folder where the dialogs begin
   * @param there whether a file is there
   */
  public DialogPicker(
      Window owner, Locale locale, Supplier<Optional<Path>> folder, Predicate<Path> there) {
    this.owner = owner;
    this.words = new WindowWords(locale);
    this.folder = folder;
    this.there = there;
  }

  private FileDialog dialog(Kind kind) {
    return new FileDialog(
        owner, words.text("pick." + kind.name()), "*" + kind.ending(), folder.get());
  }

  @Override
  public Optional<Path> toOpen(Kind kind) {
    return dialog(kind).toOpen();
  }

  @Override
  public Optional<Path> toSave(Kind kind, String name) {
    return dialog(kind).named(name + kind.ending()).toSave(kind.ending(), there);
  }
}
