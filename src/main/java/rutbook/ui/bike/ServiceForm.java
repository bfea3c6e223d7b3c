package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.End;
import rutbook.notebook.ServiceId;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.ServiceKind;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.AskOne;
import rutbook.ui.controls.AskText;
import rutbook.units.Amount;
import rutbook.units.Duration;

/** A thing serviced by hours; whose interval it is stands with it. */
final class ServiceForm extends SheetForm {
  private final ServiceId id;
  private final AskOne<ServiceKind> kind;
  private final AskText<String> name;
  private final AskOne<End> end;
  private final AskText<Amount> interval;
  private final AskOne<Boolean> common;

  ServiceForm(BikeDesk desk, Optional<ServiceItem> before, Runnable close) {
    super(desk, "service-form", desk.text("service.form"), close);
    id = before.map(ServiceItem::id).orElseGet(() -> new ServiceId(desk.desk().ids().next()));
    kind =
        wide(
            new AskOne<>(
                "service-kind",
                desk.text("service.kind"),
                Arrays.asList(ServiceKind.values()),
                before.map(ServiceItem::kind).orElse(ServiceKind.OTHER),
                desk.words()::name));
    name =
        wide(
            fields()
                .line("service-name", "service.name", before.map(ServiceItem::name).orElse("")));
    end =
        wide(
            new AskOne<>(
                "service-end",
                desk.text("service.end"),
                Arrays.asList(End.values()),
                before.map(ServiceItem::end).orElse(End.FRONT),
                desk.words()::name));
    interval =
        wide(
            fields()
                .needed(
                    "service-interval",
                    "service.interval",
                    before.map(ServiceItem::interval),
                    Duration.HOUR));
    common =
        wide(
            new AskOne<>(
                "service-common",
                desk.text("service.whose"),
                List.of(false, true),
                before.map(ServiceItem::commonPractice).orElse(false),
                practice -> desk.text(practice ? "service.common" : "service.manual")));
    if (before.isPresent()) {
      key("service-remove", desk.text("remove"), this::remove);
    }
  }

  @Override
  Sheet next(Sheet sheet) {
    ServiceKind what = take(kind);
    String called = take(name).isBlank() ? desk().words().name(what) : take(name);
    Amount hours = take(interval);
    blame(interval, () -> new ServiceItem(id, "x", take(end), what, hours, take(common)));
    ServiceItem next =
        blame(name, () -> new ServiceItem(id, called, take(end), what, hours, take(common)));
    List<ServiceItem> services = new ArrayList<>();
    boolean there = false;
    for (ServiceItem item : sheet.services()) {
      boolean same = item.id().equals(id);
      there |= same;
      services.add(same ? next : item);
    }
    if (!there) {
      services.add(next);
    }
    return sheet.withServices(services);
  }

  private void remove() {
    Sheet sheet = desk().model().sheet();
    put(
        sheet.withServices(
            sheet.services().stream().filter(each -> !each.id().equals(id)).toList()));
  }
}
