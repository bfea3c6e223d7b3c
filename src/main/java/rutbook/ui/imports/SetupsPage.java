package rutbook.ui.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import rutbook.edit.SessionStart;
import rutbook.imports.DecimalMark;
import rutbook.imports.Grid;
import rutbook.imports.ImportException;
import rutbook.imports.SetupColumn;
import rutbook.imports.SetupGuess;
import rutbook.imports.SetupImport;
import rutbook.imports.SetupMapping;
import rutbook.imports.SetupTaking;
import rutbook.notebook.Bike;
import rutbook.notebook.Carrier;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Rider;
import rutbook.notebook.RiderId;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.Track;
import rutbook.ui.Desk;
import rutbook.ui.Place;
import rutbook.ui.controls.Keys;

/** Setups of a spreadsheet: each row the start of a session on its day. */
public final class SetupsPage extends ImportPage {
  private static final String KIND = "setups.";

  private final Optional<Bike> bike;
  private SetupMapping mapping;
  private Optional<Track> track = Optional.empty();

  public SetupsPage(Desk desk, Grid grid) {
    super(desk, "import-setups", "setups.title", grid, new Place.Log());
    bike = desk.bike();
    track =
        bike.flatMap(it -> SessionStart.last(desk.notebook(), it))
            .flatMap(session -> desk.notebook().shelf().track(session.track()));
    if (bike.isPresent() && SetupGuess.isTurned(grid, sheet())) {
      read(grid.turned());
    } else {
      guess();
    }
  }

  private Sheet sheet() {
    return bike.orElseThrow().latestSheet();
  }

  @Override
  void guess() {
    if (bike.isEmpty()) {
      return;
    }
    mapping = SetupGuess.of(grid(), sheet());
    try {
      remembered(KIND).ifPresent(text -> mapping = SetupMapping.of(text, grid(), sheet()));
    } catch (ImportException otherTable) {
      mapping = SetupGuess.of(grid(), sheet());
    }
  }

  private void mean(SetupMapping next) {
    mapping = next;
    redraw();
  }

  @Override
  List<Node> questions() {
    List<Node> asked = new ArrayList<>();
    if (bike.isEmpty()) {
      return asked;
    }
    if (mapping.column(new SetupColumn.AtTrack()).isEmpty()) {
      asked.add(
          asked(
              "setups.track",
              choose(
                  "import-track",
                  words().text("setups.track"),
                  desk().notebook().shelf().tracks(),
                  track,
                  Track::name,
                  chosen -> {
                    track = Optional.of(chosen);
                    redraw();
                  })));
    }
    asked.add(order(mapping.order(), order -> mean(mapping.with(order))));
    asked.add(
        asked(
            "decimals",
            choose(
                "import-decimals",
                words().text("decimals"),
                List.of(DecimalMark.values()),
                Optional.of(mapping.decimals()),
                mark -> words().text("decimals." + mark.name()),
                mark -> mean(mapping.with(mark)))));
    asked.add(headings());
    asked.add(Keys.smallKey("import-turned", words().text("turned"), () -> read(grid().turned())));
    return asked;
  }

  @Override
  ComboBox<?> choice(int column) {
    List<SetupColumn> all =
        new ArrayList<>(
            List.of(
                new SetupColumn.Nothing(),
                new SetupColumn.Day(),
                new SetupColumn.AtTrack(),
                new SetupColumn.Note(),
                new SetupColumn.Meter()));
    if (bike.isEmpty()) {
      return choose(
          "import-column-" + (column + 1), "", all, Optional.empty(), this::said, it -> {});
    }
    for (Setting setting : sheet().settings()) {
      all.add(new SetupColumn.OfSetting(setting.id(), Optional.empty()));
      if (setting.carrier() == Carrier.PAIR) {
        all.add(new SetupColumn.OfSetting(setting.id(), Optional.of(Side.LEFT)));
        all.add(new SetupColumn.OfSetting(setting.id(), Optional.of(Side.RIGHT)));
      }
    }
    return choose(
        "import-column-" + (column + 1),
        words().text("column", column + 1),
        all,
        Optional.of(mapping.columns().get(column)),
        this::said,
        meant -> mean(mapping.with(column, meant)));
  }

  private String said(SetupColumn column) {
    if (column instanceof SetupColumn.OfSetting of) {
      String name = sheet().setting(of.setting()).map(Setting::name).orElse(of.setting().text());
      return of.leg()
          .map(leg -> words().text("setups.leg", name, leg))
          .orElse(desk().phrases().safe(name));
    }
    if (column instanceof SetupColumn.Day) {
      return words().text("kind.DAY");
    }
    if (column instanceof SetupColumn.AtTrack) {
      return words().text("kind.TRACK");
    }
    if (column instanceof SetupColumn.Note) {
      return words().text("kind.NOTE");
    }
    return words().text(column instanceof SetupColumn.Meter ? "kind.METER" : "kind.NOTHING");
  }

  private SetupImport found() {
    return SetupTaking.of(
        desk().notebook(),
        bike.orElseThrow().id(),
        grid(),
        mapping,
        new SetupImport.Wanted(rider(), track),
        desk().ids());
  }

  /** Who rode last, or the first rider, or a new one where there is none yet. */
  private Rider rider() {
    return SessionStart.rider(desk().notebook(), bike.orElseThrow())
        .orElseGet(
            () -> new Rider(new RiderId(desk().ids().next()), desk().text("new.rider"), List.of()));
  }

  @Override
  void look() {
    if (bike.isEmpty()) {
      show(words().text("setups.nobike"), List.of(), List.of(), false);
      return;
    }
    if (mapping.column(new SetupColumn.Day()).isEmpty()) {
      show(words().text("setups.no-day"), List.of(), List.of(), false);
      return;
    }
    if (SetupImport.asksOrder(grid(), mapping)) {
      show(words().text("ask-order"), List.of(), List.of(), false);
      return;
    }
    SetupImport found = found();
    List<String> taken = new ArrayList<>();
    for (SetupImport.Row row : found.rows()) {
      taken.add(words().text("setups.row", row.line(), row.day(), row.track().name()));
      taken.addAll(words().beyond(row.line(), row.beyond()));
    }
    show(
        words().text("setups.found", found.rows().size()),
        taken,
        found.notTaken(),
        !found.rows().isEmpty());
  }

  @Override
  void take() {
    remember(KIND, mapping.text());
    Optional<NotebookException> refused = found().edit().flatMap(desk()::make);
    if (refused.isPresent()) {
      refuse(desk().settingWords().refusal(refused.get()));
    } else {
      desk().go(new Place.Log());
    }
  }
}
