package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Due;
import rutbook.notebook.Hours;
import rutbook.notebook.ServiceItem;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;
import rutbook.units.Duration;

/** What is serviced by hours, and how long ago each was. */
final class ServiceSection extends Section {
  private final ListAndDetail sides = new ListAndDetail();

  ServiceSection(BikeDesk desk) {
    super(desk, "service");
    getChildren().add(sides);
  }

  @Override
  void show(BikeModel model) {
    Hours hours = model.timeline().hours();
    sides.otherwise(
        Rows.aside(
            desk().text("service.title"),
            Keys.prose(desk().text("service.hint", hours.total()), "soft"),
            Rows.keys(
                Keys.mainKey("service-done", desk().text("service.done"), this::done),
                Keys.key("service-add", desk().text("service.add"), this::newThing),
                Keys.key(
                    "service-meter",
                    desk().text("service.meter"),
                    () -> desk().desk().go(new Place.Meter())))));
    List<ListAndDetail.Row> rows = new ArrayList<>();
    for (ServiceItem item : model.sheet().services()) {
      rows.add(row(hours, item));
    }
    sides.show(
        rows.isEmpty()
            ? List.of(
                new ListAndDetail.Part(
                    Optional.of(Keys.prose(desk().text("service.none"), "soft")), List.of()))
            : List.of(new ListAndDetail.Part(Optional.empty(), rows)));
  }

  private ListAndDetail.Row row(Hours hours, ServiceItem item) {
    double since = hours.since(item);
    double interval = item.interval().doubleIn(Duration.HOUR);
    String style =
        switch (Due.of(since, interval)) {
          case NOT_YET -> "soft";
          case NEARLY, DUE -> "due";
          case OVERDUE -> "overdue";
        };
    String value =
        desk()
            .text(
                "service.hours",
                desk().words().number(since, 1),
                desk().words().number(interval, 1));
    String source = desk().text(item.commonPractice() ? "service.common" : "service.manual");
    String more = hours.everDone(item) ? source : desk().text("service.never", source);
    return new ListAndDetail.Row(
        "service-" + item.id(),
        item,
        Rows.face(item.name(), more, value, style),
        desk().text("said", item.name(), value),
        () -> new ServiceForm(desk(), Optional.of(item), sides::close));
  }

  private void done() {
    sides.open(new ServicedForm(desk(), Optional.empty(), sides::close));
  }

  @Override
  void newThing() {
    sides.open(new ServiceForm(desk(), Optional.empty(), sides::close));
  }
}
