package rutbook.ui;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import rutbook.ui.fx.FileDialog;

/** Open, new, copy, recent; theme and text size; the shortcut sheet. */
final class FileMenu {
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
            recent(),
            new SeparatorMenuItem(),
            themes(),
            sizes(),
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
      item.setOnAction(event -> files.open(path, this::answered));
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

  void open() {
    dialog().toOpen().ifPresent(path -> files.open(path, this::answered));
  }

  void startNew() {
    dialog().toSave().ifPresent(path -> files.startNew(path, this::answered));
  }

  void copy() {
    dialog().toSave().ifPresent(path -> files.copyTo(path, this::answered));
  }

  private FileDialog dialog() {
    return new FileDialog(window.stage(), desk.text("file.kind"), "*.rutbook", files.folder());
  }

  private void answered(NotebookFiles.Answer answer) {
    if (answer instanceof NotebookFiles.Answer.Opened now) {
      desk.editor().open(now.notebook());
      opened.run();
      if (!now.notice().isEmpty()) {
        overlay.tell(now.path().getFileName().toString(), now.notice(), List.of());
      }
    } else if (answer instanceof NotebookFiles.Answer.Refused refused) {
      overlay.tell(
          desk.text("trouble.title"),
          refused.sentence(),
          refused.ways().stream()
              .map(way -> new Overlay.Choice(way.label(), () -> way.take().accept(this::answered)))
              .toList());
    }
  }
}
