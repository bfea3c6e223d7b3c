package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import rutbook.notebook.Entry;
import rutbook.notebook.Head;
import rutbook.notebook.ServiceId;
import rutbook.notebook.ServiceItem;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;

/** What was serviced, when, at which hours and by whom. */
final class ServicedForm extends EntryForm<Entry.Serviced> {
  private final Map<ServiceId, ToggleButton> items = new LinkedHashMap<>();
  private final AskText<String> by;

  ServicedForm(BikeDesk desk, Optional<Entry.Serviced> before, Runnable close) {
    super(desk, "serviced-form", desk.text("serviced.form"), before, close);
    FlowPane keys = new FlowPane(6, 6);
    for (ServiceItem item : desk.model().sheet().services()) {
      ToggleButton key = Keys.choice("serviced-" + item.id(), item.name(), () -> {});
      key.setSelected(before.map(entry -> entry.items().contains(item.id())).orElse(false));
      items.put(item.id(), key);
      keys.getChildren().add(key);
    }
    say(new VBox(3, Keys.label(desk.text("serviced.items"), "group-title"), keys));
    askDayAndMeter("serviced");
    by =
        wide(
            fields().line("serviced-by", "serviced.by", before.map(Entry.Serviced::by).orElse("")));
    askNote("serviced");
  }

  @Override
  Entry.Serviced next(Head head) {
    List<ServiceId> done = new ArrayList<>();
    items.forEach(
        (id, key) -> {
          if (key.isSelected()) {
            done.add(id);
          }
        });
    if (done.isEmpty()) {
      throw new Refused(by, desk().text("serviced.nothing"));
    }
    return blame(by, () -> new Entry.Serviced(head, done, take(by)));
  }
}
