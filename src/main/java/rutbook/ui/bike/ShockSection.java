package rutbook.ui.bike;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rutbook.figures.SagByLengths;
import rutbook.notebook.Entry;
import rutbook.notebook.Rider;
import rutbook.notebook.SagWindows;
import rutbook.notebook.ShockParts;
import rutbook.ui.controls.Keys;
import rutbook.ui.controls.Scrolling;
import rutbook.units.Amount;

/** Shock and sag: what was measured, the worksheet of it, and how the rear is built. */
final class ShockSection extends Section {
  private static final Comparator<Entry> NEWEST =
      Comparator.comparing(Entry::day).thenComparingInt(entry -> entry.head().order()).reversed();

  private final ListAndDetail sides = new ListAndDetail();

  ShockSection(BikeDesk desk) {
    super(desk, "shock");
    getChildren().add(sides);
  }

  @Override
  void show(BikeModel model) {
    sides.otherwise(Scrolling.withStop(new SagSheet(desk(), this::newThing)));
    List<ListAndDetail.Part> parts = new ArrayList<>();
    parts.add(
        new ListAndDetail.Part(
            Optional.of(Rows.heading(desk().text("sag.sheet"))),
            List.of(windows(model), build(model))));
    List<ListAndDetail.Row> riders =
        model.notebook().shelf().riders().stream().map(this::rider).toList();
    if (!riders.isEmpty()) {
      parts.add(
          new ListAndDetail.Part(Optional.of(Rows.heading(desk().text("weight.heading"))), riders));
    }
    List<ListAndDetail.Row> measured =
        model.timeline().entries(Entry.SagMeasured.class).stream()
            .sorted(NEWEST)
            .map(this::measured)
            .toList();
    parts.add(
        new ListAndDetail.Part(
            Optional.of(
                measured.isEmpty()
                    ? Keys.prose(desk().text("sag.none"), "soft")
                    : Rows.heading(desk().text("sag.measured"))),
            measured));
    sides.show(parts);
  }

  private ListAndDetail.Row measured(Entry.SagMeasured sag) {
    String unknown = desk().text("not.known");
    String what =
        desk()
            .text(
                "sag.row",
                desk().words().name(sag.end()),
                sag.race().map(desk().words()::amount).orElse(unknown),
                sag.free().map(desk().words()::amount).orElse(unknown));
    String friction =
        sag.lengths()
            .flatMap(SagByLengths::of)
            .map(each -> desk().text("sag.friction.of", each.friction()))
            .orElse("");
    String more =
        desk()
            .words()
            .joined(
                List.of(
                    Optional.of(friction),
                    sag.weight().map(each -> desk().text("sag.weight.of", each)),
                    Optional.of(sag.head().note())));
    String day = desk().words().day(sag.day());
    return new ListAndDetail.Row(
        "sag-" + sag.id(),
        sag,
        Rows.face(what, more, day),
        desk().text("said", what, day),
        () -> new SagForm(desk(), Optional.of(sag), sides::close));
  }

  private ListAndDetail.Row windows(BikeModel model) {
    SagWindows windows = model.sheet().parts().sag();
    String what = desk().text("windows.form");
    String more =
        desk()
            .words()
            .joined(
                List.of(
                    windows
                        .rearRace()
                        .map(each -> desk().text("windows.race.of", desk().words().range(each))),
                    windows
                        .rearFree()
                        .map(each -> desk().text("windows.free.of", desk().words().range(each))),
                    windows
                        .frontRace()
                        .map(each -> desk().text("windows.front.of", desk().words().range(each)))));
    return new ListAndDetail.Row(
        "sag-windows",
        windows,
        Rows.face(what, more, ""),
        desk().text("said", what, more),
        () -> new WindowsForm(desk(), sides::close));
  }

  private ListAndDetail.Row build(BikeModel model) {
    ShockParts shock = model.sheet().parts().shock();
    String what = desk().text("shock.form");
    String more =
        desk()
            .words()
            .joined(
                List.of(
                    shock.wheelTravel().map(each -> desk().text("shock.travel.of", each)),
                    shock
                        .motionRatio()
                        .map(
                            each ->
                                desk()
                                    .text(
                                        "shock.ratio.of",
                                        each.value().doubleValue(),
                                        each.convention())),
                    Optional.of(shock.valving())));
    return new ListAndDetail.Row(
        "shock-build",
        shock,
        Rows.face(what, more, ""),
        desk().text("said", what, more),
        () -> new ShockForm(desk(), sides::close));
  }

  private ListAndDetail.Row rider(Rider rider) {
    Optional<Amount> weight = rider.weightOn(desk().desk().today());
    String value = weight.map(desk().words()::amount).orElseGet(() -> desk().text("not.known"));
    return new ListAndDetail.Row(
        "rider-" + rider.id(),
        rider,
        Rows.face(rider.name(), "", value),
        desk().text("said", rider.name(), value),
        () -> new WeightForm(desk(), rider, sides::close));
  }

  @Override
  void newThing() {
    sides.open(new SagForm(desk(), Optional.empty(), sides::close));
  }
}
