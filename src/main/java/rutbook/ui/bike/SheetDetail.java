package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import rutbook.notebook.Bike;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.Keys;

/** A sheet of the history: what it changed from the one before, and a way to look at it whole. */
final class SheetDetail extends VBox {
  private final Button show;

  SheetDetail(BikeDesk desk, Sheet sheet, Runnable close) {
    super(10);
    getStyleClass().add("card");
    setId("sheet-detail");
    show = Keys.mainKey("sheet-show", desk.text("sheet.show"), () -> desk.showSheet(sheet.from()));
    List<Node> lines = new ArrayList<>();
    lines.add(Keys.prose(desk.text("sheet.from", sheet.from()), "card-title"));
    lines.add(Keys.prose(sheet.reason(), "soft"));
    changes(desk, sheet).forEach(line -> lines.add(Keys.prose(line)));
    lines.add(Rows.keys(show, Keys.key("sheet-close", desk.text("cancel"), close)));
    lines.add(new SheetDay(desk, sheet, close));
    getChildren().setAll(lines);
  }

  private static List<String> changes(BikeDesk desk, Sheet sheet) {
    Bike bike = desk.model().bike();
    int place = bike.sheets().indexOf(sheet);
    if (place <= 0) {
      return List.of(desk.text("sheet.first", sheet.settings().size()));
    }
    Sheet before = bike.sheets().get(place - 1);
    List<String> lines = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      String now = desk.words().bounds(sheet, setting);
      String was =
          before.setting(setting.id()).map(each -> desk.words().bounds(before, each)).orElse("");
      if (was.isEmpty()) {
        lines.add(desk.text("sheet.added", setting.name(), now));
      } else if (!was.equals(now)) {
        lines.add(desk.text("sheet.changed", setting.name(), was, now));
      }
    }
    for (Setting setting : before.settings()) {
      if (sheet.setting(setting.id()).isEmpty()) {
        lines.add(desk.text("sheet.removed", setting.name()));
      }
    }
    String fork = sheet.parts().fork().valving();
    String shock = sheet.parts().shock().valving();
    if (!fork.equals(before.parts().fork().valving())) {
      lines.add(desk.text("sheet.fork.valving", fork));
    }
    if (!shock.equals(before.parts().shock().valving())) {
      lines.add(desk.text("sheet.shock.valving", shock));
    }
    return lines.isEmpty() ? List.of(desk.text("sheet.same")) : lines;
  }

  @Override
  public void requestFocus() {
    show.requestFocus();
  }
}
