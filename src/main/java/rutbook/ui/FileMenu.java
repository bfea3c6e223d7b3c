package rutbook.ui;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import rutbook.edit.ShelfEdit;
import rutbook.ui.fx.FileDialog;
import rutbook.units.Dimension;
import rutbook.units.Display;
import rutbook.units.Unit;
import rutbook.words.Language;

/** Open, new, copy, recent; theme and text size; the shortcut sheet. */
final class FileMenu {
  private static final String ENDING = ".rutbook";

  private final Desk desk;
  private final NotebookFiles files;
  private final Window window;
  private final Overlay overlay;
  private final Runnable opened;

  FileMenu(Desk desk, NotebookFiles files, Window window, Overlay overlay, Runnable opened) {
    this.desk = desk;
    this.files = files;
    this.window = window;
    this.overlay = overlay;
    this.opened = opened;
  }

  void show(Node beside) {
    ContextMenu menu = new ContextMenu();
    menu.getItems()
        .addAll(
            item("menu.open", this::open),
            item("menu.new", this::startNew),
            item("menu.copy", this::copy),
            item("menu.import", this::importSetups),
            recent(),
            new SeparatorMenuItem(),
            themes(),
            sizes(),
            languages(),
            units(),
            item("menu.shortcuts", () -> desk.go(new Place.Shortcuts())));
    menu.show(beside, javafx.geometry.Side.RIGHT, 4, -120);
  }

  private MenuItem item(String key, Runnable action) {
    MenuItem item = new MenuItem(desk.text(key));
    item.setOnAction(event -> action.run());
    return item;
  }

  private Menu recent() {
    Menu menu = new Menu(desk.text("menu.recent"));
    for (Path path : files.recent()) {
      MenuItem item = new MenuItem(path.toString());
      item.setMnemonicParsing(false);
      item.setOnAction(event -> files.open(path, this::told));
      menu.getItems().add(item);
    }
    if (menu.getItems().isEmpty()) {
      MenuItem none = new MenuItem(desk.text("menu.recent.none"));
      none.setDisable(true);
      menu.getItems().add(none);
    }
    return menu;
  }

  private Menu themes() {
    Menu menu = new Menu(desk.text("menu.theme"));
    for (Theme theme : Theme.values()) {
      RadioMenuItem item = new RadioMenuItem(desk.text("menu.theme." + theme));
      item.setSelected(theme == window.theme());
      item.setOnAction(event -> window.use(theme));
      menu.getItems().add(item);
    }
    return menu;
  }

  private Menu sizes() {
    Menu menu = new Menu(desk.text("menu.text"));
    for (TextSize size : TextSize.values()) {
      RadioMenuItem item = new RadioMenuItem(desk.text("menu.text." + size));
      item.setSelected(size == window.textSize());
      item.setOnAction(event -> window.use(size));
      menu.getItems().add(item);
    }
    return menu;
  }

  /** Each by its own name, so that it is found by who cannot read the others. */
  private Menu languages() {
    Menu menu = new Menu(desk.text("menu.language"));
    Language spoken = window.language().orElse(Language.of(desk.words().locale()));
    for (Language language : Language.values()) {
      RadioMenuItem item = new RadioMenuItem(language.ownName());
      item.setSelected(language == spoken);
      item.setOnAction(event -> window.use(language));
      menu.getItems().add(item);
    }
    return menu;
  }

  /** Per kind of quantity, the unit that the screen shows; the notebook keeps what was written. */
  private Menu units() {
    Menu menu = new Menu(desk.text("menu.units"));
    Display shown = desk.notebook().display();
    for (Dimension dimension : Dimension.values()) {
      List<Unit> choices = Unit.of(dimension);
      if (choices.size() > 1 && dimension != Dimension.DURATION) {
        Menu kind = new Menu(desk.text("menu.units." + dimension));
        for (Unit unit : choices) {
          RadioMenuItem item = new RadioMenuItem(unit.symbol());
          item.setMnemonicParsing(false);
          item.setSelected(unit == shown.unit(dimension));
          item.setOnAction(event -> desk.make(new ShelfEdit.ChooseUnits(shown.with(unit))));
          kind.getItems().add(item);
        }
        menu.getItems().add(kind);
      }
    }
    return menu;
  }

  /** What can be done about a save that failed. */
  void settle() {
    files.settle(this::told);
  }

  void open() {
    dialog()
        .or(desk.text("pick.SETUP"), "*" + FilePicker.Kind.SETUP.ending())
        .toOpen()
        .ifPresent(this::open);
  }

  /** Setups of a spreadsheet. */
  private void importSetups() {
    desk.openTable(
        table -> desk.go(new Place.ImportSetups(table)),
        sentence -> overlay.tell(desk.text("trouble.title"), sentence, List.of()));
  }

  /** A notebook, or a setup file that somebody sent. */
  void open(Path path) {
    if (path.getFileName().toString().endsWith(FilePicker.Kind.SETUP.ending())) {
      desk.openSetup(
          path, sentence -> overlay.tell(desk.text("trouble.title"), sentence, List.of()));
    } else {
      files.open(path, this::told);
    }
  }

  void startNew() {
    dialog().toSave(ENDING, files::isThere).ifPresent(path -> files.startNew(path, this::told));
  }

  void copy() {
    dialog().toSave(ENDING, files::isThere).ifPresent(path -> files.copyTo(path, this::told));
  }

  private FileDialog dialog() {
    return new FileDialog(window.stage(), desk.text("file.kind"), "*" + ENDING, files.folder());
  }

  /** Shows what came of an attempt. */
  void told(NotebookFiles.Answer answer) {
    if (answer instanceof NotebookFiles.Answer.Opened now) {
      if (desk.notebook() != now.notebook()) {
        desk.editor().open(now.notebook());
      }
      opened.run();
      if (!now.notice().isEmpty()) {
        overlay.tell(now.path().getFileName().toString(), now.notice(), List.of());
      }
    } else if (answer instanceof NotebookFiles.Answer.Refused refused) {
      overlay.tell(
          desk.text("trouble.title"),
          refused.sentence(),
          refused.ways().stream()
              .map(way -> new Overlay.Choice(way.label(), () -> way.take().accept(this::told)))
              .toList());
    }
  }
}
