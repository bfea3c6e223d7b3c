package rutbook.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.control.TextField;
import rutbook.notebook.Notebook;
import rutbook.ui.controls.RowKey;

/** What of the Bike page is taken pictures of: every part of it, its forms, the guided start. */
final class BikePictures {
  private BikePictures() {}

  static List<Pictures.View> views(Map<String, Notebook> notebooks) {
    List<Pictures.View> views = new ArrayList<>();
    for (Map.Entry<String, Notebook> each : notebooks.entrySet()) {
      if (each.getValue().bikes().isEmpty()) {
        views.add(view(each, "start", Place.BikePart.SETTINGS));
        continue;
      }
      for (Place.BikePart part : Place.BikePart.values()) {
        views.add(view(each, part.name().toLowerCase(Locale.ROOT), part));
      }
    }
    Map.Entry<String, Notebook> season = Map.entry("season", notebooks.get("season"));
    views.add(view(season, "clicker", Place.BikePart.SETTINGS, "bike-setting-fork-compression"));
    views.add(view(season, "fill", Place.BikePart.SETTINGS, "bike-setting-fork-oil"));
    views.add(view(season, "new-setting", Place.BikePart.SETTINGS, "add-setting"));
    views.add(view(season, "new-sheet", Place.BikePart.SETTINGS, "new-sheet"));
    views.add(
        view(
            season,
            "adjust",
            Place.BikePart.SETTINGS,
            "bike-setting-fork-rebound",
            "setting-adjust"));
    views.add(view(season, "sag-form", Place.BikePart.SHOCK, "sag-add"));
    views.add(view(season, "windows-form", Place.BikePart.SHOCK, "sag-windows"));
    views.add(view(season, "shock-form", Place.BikePart.SHOCK, "shock-build"));
    views.add(view(season, "fork-form", Place.BikePart.FORK, "fork-build"));
    views.add(view(season, "gas", Place.BikePart.FORK, "gas"));
    views.add(view(season, "fork-table", Place.BikePart.FORK, "fork-chart-table-key"));
    views.add(
        new Pictures.View(
            "season-bike-which",
            notebooks.get("season"),
            shown -> {
              shown.go(new Place.Bike(Place.BikePart.SETTINGS));
              shown.touch();
              ((RowKey) shown.scene().lookup("#bike-setting-fork-compression")).fire();
              shown.touch();
              ((TextField) shown.scene().lookup("#setting-most")).setText("14");
              shown.touch("setting-form-save");
            }));
    views.add(view(season, "geometry-form", Place.BikePart.STEERING, "geometry"));
    views.add(view(season, "torque-form", Place.BikePart.TORQUES, "torque-0"));
    views.add(view(season, "event-form", Place.BikePart.HISTORY, "event-fault"));
    views.add(view(season, "baseline-form", Place.BikePart.HISTORY, "baseline-add"));
    views.add(view(season, "another", Place.BikePart.SETTINGS, "bike-new"));
    views.add(
        new Pictures.View("empty-bike-start-2", notebooks.get("empty"), BikePictures::second));
    views.add(
        new Pictures.View(
            "empty-bike-start-3",
            notebooks.get("empty"),
            shown -> {
              second(shown);
              shown.touch("start-next");
            }));
    return views;
  }

  private static Pictures.View view(
      Map.Entry<String, Notebook> notebook, String name, Place.BikePart part, String... touched) {
    return new Pictures.View(
        notebook.getKey() + "-bike-" + name,
        notebook.getValue(),
        shown -> {
          shown.go(new Place.Bike(part));
          for (String id : touched) {
            shown.touch();
            if (shown.scene().lookup("#" + id) instanceof RowKey row) {
              row.fire();
            }
          }
          shown.touch(touched);
        });
  }

  private static void second(Pictures.Shown shown) {
    shown.go(new Place.Bike(Place.BikePart.SETTINGS));
    shown.touch();
    ((TextField) shown.scene().lookup("#start-name")).setText("Blue 250");
    shown.touch("start-next");
  }
}
