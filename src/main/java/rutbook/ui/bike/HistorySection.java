package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import rutbook.notebook.Entry;
import rutbook.notebook.EventKind;
import rutbook.notebook.ServiceItem;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;

/** What happened to the bike besides riding: events, service, baselines, sheets, newest first. */
final class HistorySection extends Section {
  private static final Comparator<Entry> NEWEST =
      Comparator.comparing(Entry::day).thenComparingInt(entry -> entry.head().order()).reversed();

  private final ListAndDetail sides = new ListAndDetail();

  HistorySection(BikeDesk desk) {
    super(desk, "history");
    getChildren().add(sides);
  }

  @Override
  void show(BikeModel model) {
    sides.otherwise(aside(model));
    List<ListAndDetail.Part> parts = new ArrayList<>();
    add(
        parts,
        "history.happened",
        Stream.concat(
                model.timeline().entries(Entry.Event.class).stream(),
                model.timeline().entries(Entry.Serviced.class).stream())
            .sorted(NEWEST)
            .map(entry -> happened(model, entry))
            .toList());
    add(
        parts,
        "history.baselines",
        model.timeline().entries(Entry.Baseline.class).stream()
            .sorted(NEWEST)
            .map(entry -> baseline(model, entry))
            .toList());
    List<Sheet> sheets = new ArrayList<>(model.bike().sheets());
    sheets.sort(Comparator.comparing(Sheet::from).reversed());
    add(parts, "history.sheets", sheets.stream().map(sheet -> sheet(model, sheet)).toList());
    sides.show(parts);
  }

  private void add(List<ListAndDetail.Part> parts, String key, List<ListAndDetail.Row> rows) {
    if (!rows.isEmpty()) {
      parts.add(new ListAndDetail.Part(Optional.of(Rows.heading(desk().text(key))), rows));
    }
  }

  private Node aside(BikeModel model) {
    VBox box =
        Rows.aside(
            desk().text("history.title"),
            Keys.prose(desk().text("history.hint"), "soft"),
            Rows.keys(
                event("crash", EventKind.CRASH),
                event("fault", EventKind.FAULT_SEEN),
                event("part", EventKind.PART_CHANGED),
                event("sound", EventKind.CHECKED_SOUND)),
            Rows.keys(
                Keys.key(
                    "serviced-add",
                    desk().text("service.done"),
                    () -> sides.open(new ServicedForm(desk(), Optional.empty(), sides::close))),
                Keys.key(
                    "baseline-add",
                    desk().text("baseline.add"),
                    () -> sides.open(new BaselineForm(desk(), Optional.empty(), sides::close)))));
    if (!model.outside().isEmpty()) {
      box.getChildren().add(SheetSummary.outside(desk(), model));
    }
    return Scrolling.withStop(box);
  }

  private Node event(String id, EventKind kind) {
    return Keys.key(
        "event-" + id,
        desk().words().name(kind),
        () -> sides.open(new EventForm(desk(), Optional.empty(), kind, sides::close)));
  }

  private ListAndDetail.Row happened(BikeModel model, Entry entry) {
    if (entry instanceof Entry.Event event) {
      String what =
          desk().words().name(event.kind())
              + event.fault().map(fault -> ", " + desk().words().within(fault)).orElse("");
      return row(
          event,
          what,
          event.what(),
          () -> new EventForm(desk(), Optional.of(event), event.kind(), sides::close));
    }
    Entry.Serviced serviced = (Entry.Serviced) entry;
    List<String> names =
        serviced.items().stream()
            .map(
                id ->
                    model.sheet().services().stream()
                        .filter(item -> item.id().equals(id))
                        .findFirst()
                        .map(ServiceItem::name)
                        .orElse(id.text()))
            .toList();
    return row(
        serviced,
        desk().text("history.serviced", desk().words().list(names)),
        serviced.by(),
        () -> new ServicedForm(desk(), Optional.of(serviced), sides::close));
  }

  private ListAndDetail.Row baseline(BikeModel model, Entry.Baseline entry) {
    long outside =
        model.outside().stream().filter(each -> each.baseline().equals(Optional.of(entry))).count();
    String reason = entry.reason().isBlank() ? desk().text("baseline.no.reason") : entry.reason();
    return row(
        entry,
        reason,
        outside == 0 ? "" : desk().text("baseline.outside", outside),
        () -> new BaselineForm(desk(), Optional.of(entry), sides::close));
  }

  private ListAndDetail.Row row(
      Entry entry, String what, String more, java.util.function.Supplier<Node> detail) {
    String day = desk().words().day(entry.day());
    return new ListAndDetail.Row(
        "history-" + entry.id(),
        entry,
        Rows.face(what, more, day),
        desk().text("said", what, day),
        detail);
  }

  private ListAndDetail.Row sheet(BikeModel model, Sheet sheet) {
    String day = desk().words().day(sheet.from());
    String reason = sheet.reason().isBlank() ? desk().text("sheet.no.reason") : sheet.reason();
    String shown = sheet.equals(model.sheet()) ? desk().text("sheet.shown") : "";
    return new ListAndDetail.Row(
        "history-sheet-" + sheet.from(),
        sheet,
        Rows.face(reason, shown, day),
        desk().text("said", reason, day),
        () -> new SheetDetail(desk(), sheet, sides::close));
  }
}
