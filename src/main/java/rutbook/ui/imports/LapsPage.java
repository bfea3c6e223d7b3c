package rutbook.ui.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import rutbook.imports.Grid;
import rutbook.imports.ImportException;
import rutbook.imports.LapGuess;
import rutbook.imports.LapImport;
import rutbook.imports.LapMapping;
import rutbook.imports.LapUnit;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.NotebookException;
import rutbook.ui.Desk;
import rutbook.ui.Place;

/** Laps of a timing system for one moto: whose they are, which column is what. */
public final class LapsPage extends ImportPage {
  private static final String KIND = "laps.";

  private final EntryId session;
  private final MotoId moto;
  private LapMapping mapping;
  private Optional<String> rider = Optional.empty();
  private boolean instead;

  public LapsPage(Desk desk, EntryId session, MotoId moto, Grid grid) {
    super(desk, "import-laps", "laps.title", grid, new Place.Session(session));
    this.session = session;
    this.moto = moto;
    guess();
  }

  @Override
  void guess() {
    mapping = LapGuess.of(grid());
    try {
      remembered(KIND).ifPresent(text -> mapping = LapMapping.of(text, grid()));
    } catch (ImportException otherTable) {
      mapping = LapGuess.of(grid());
    }
  }

  private void mean(LapMapping next) {
    mapping = next;
    redraw();
  }

  private Optional<Moto> moto() {
    return desk()
        .notebook()
        .entry(session)
        .filter(Entry.Session.class::isInstance)
        .flatMap(entry -> ((Entry.Session) entry).moto(moto));
  }

  private Map<String, Integer> riders() {
    return LapImport.riders(grid(), mapping);
  }

  @Override
  List<Node> questions() {
    List<Node> asked = new ArrayList<>();
    List<String> riders = List.copyOf(riders().keySet());
    rider = riders.size() == 1 ? Optional.of(riders.get(0)) : rider.filter(riders::contains);
    if (riders.size() > 1) {
      asked.add(
          asked(
              "laps.whose",
              choose(
                  "import-rider",
                  words().text("laps.whose"),
                  riders,
                  rider,
                  name -> words().text("laps.rider", name, riders().get(name)),
                  name -> {
                    rider = Optional.of(name);
                    redraw();
                  })));
    }
    if (mapping.day().isPresent()) {
      asked.add(order(mapping.order(), order -> mean(mapping.with(order))));
    }
    asked.add(
        asked(
            "unit",
            choose(
                "import-unit",
                words().text("unit"),
                List.of(LapUnit.values()),
                Optional.of(mapping.unit()),
                unit -> words().text("unit." + unit.name()),
                unit -> mean(mapping.in(unit)))));
    asked.add(headings());
    if (moto().filter(it -> !it.report().laps().isEmpty()).isPresent()) {
      asked.add(
          tick(
              "import-instead",
              "laps.instead",
              instead,
              now -> {
                instead = now;
                redraw();
              }));
    }
    return asked;
  }

  @Override
  ComboBox<?> choice(int column) {
    return choose(
        "import-column-" + (column + 1),
        words().text("column", column + 1),
        List.of(LapMapping.Kind.values()),
        Optional.of(mapping.kind(column)),
        kind -> words().text("kind." + kind.name()),
        kind -> mean(mapping.with(column, kind)));
  }

  private LapImport found() {
    Optional<Entry> entry = desk().notebook().entry(session);
    return LapImport.of(grid(), mapping, new LapImport.Wanted(rider, entry.map(Entry::day)));
  }

  @Override
  void look() {
    LapImport found = found();
    boolean whose = riders().size() <= 1 || rider.isPresent();
    boolean order = !LapImport.asksOrder(grid(), mapping);
    List<String> taken = new ArrayList<>();
    String heading;
    if (mapping.times().isEmpty()) {
      heading = words().text("laps.no-column");
    } else if (!whose) {
      heading = words().text("laps.ask-whose");
    } else if (!order) {
      heading = words().text("ask-order");
    } else {
      heading = words().text("laps.found", found.rows().size());
      if (moto().filter(found::isIn).isPresent()) {
        taken.add(words().text("laps.there"));
      }
      found
          .rows()
          .forEach(
              row ->
                  taken.add(
                      words().text("laps.row", row.line(), desk().words().lap(row.millis()))));
    }
    boolean ready = whose && order && !found.rows().isEmpty() && moto().isPresent();
    show(heading, taken, whose && order ? found.notTaken() : List.of(), ready);
  }

  @Override
  void take() {
    remember(KIND, mapping.text());
    Optional<NotebookException> refused =
        desk().make(found().edit(session, moto().orElseThrow(), instead));
    if (refused.isPresent()) {
      refuse(desk().settingWords().refusal(refused.get()));
    } else {
      desk().editor().closeStep();
      desk().go(new Place.Session(session));
    }
  }
}
