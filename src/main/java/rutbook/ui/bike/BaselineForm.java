package rutbook.ui.bike;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import rutbook.notebook.End;
import rutbook.notebook.Entry;
import rutbook.notebook.Head;
import rutbook.notebook.Placed;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.ui.controls.AskText;
import rutbook.ui.controls.Keys;
import rutbook.units.Amount;
import rutbook.units.Dimension;

/** The setup to return to: a new one is what is on the bike now, with the reason to keep it. */
final class BaselineForm extends EntryForm<Entry.Baseline> {
  private final AskText<String> reason;
  private final AskText<Optional<Amount>> race;
  private final AskText<Optional<Amount>> free;

  BaselineForm(BikeDesk desk, Optional<Entry.Baseline> before, Runnable close) {
    super(
        desk,
        "baseline-form",
        desk.text(before.isPresent() ? "baseline.form" : "baseline.form.new"),
        before,
        close);
    reason =
        wide(
            fields()
                .line(
                    "baseline-reason",
                    "baseline.reason",
                    before.map(Entry.Baseline::reason).orElse("")));
    reason.example(desk.text("baseline.reason.example"));
    askDayAndMeter("baseline");
    Optional<Entry.SagMeasured> rear = desk.model().timeline().sag(End.REAR);
    race =
        ask(
            fields()
                .amount(
                    "baseline-race",
                    "sag.race",
                    before.isPresent()
                        ? before.flatMap(Entry.Baseline::raceSag)
                        : rear.flatMap(Entry.SagMeasured::race),
                    Dimension.LENGTH));
    free =
        ask(
            fields()
                .amount(
                    "baseline-free",
                    "sag.free",
                    before.isPresent()
                        ? before.flatMap(Entry.Baseline::freeSag)
                        : rear.flatMap(Entry.SagMeasured::free),
                    Dimension.LENGTH));
    say(readings(desk, setup()));
    askNote("baseline");
  }

  private Setup setup() {
    return before()
        .map(Entry.Baseline::setup)
        .orElseGet(() -> desk().model().timeline().startOn(desk().desk().today()));
  }

  /** Every reading; those outside the sheet in brick. */
  private static GridPane readings(BikeDesk desk, Setup setup) {
    GridPane grid = new GridPane();
    grid.setHgap(10);
    grid.setVgap(4);
    Sheet sheet = desk.model().sheet();
    List<Placed> placed = setup.placed();
    int row = 0;
    for (Placed each : placed) {
      Optional<Setting> setting = sheet.setting(each.setting());
      if (setting.isEmpty()) {
        continue;
      }
      Label name = Keys.label(setting.get().name(), "soft");
      Label value =
          Keys.label(desk.words().readings().reading(setting.get(), each.reading()), "number");
      if (!rutbook.notebook.Bounds.isInside(sheet, setting.get(), each.reading())) {
        value.setText(desk.text("outside.short", value.getText()));
        value.getStyleClass().add("overdue");
      }
      GridPane.setHgrow(name, Priority.ALWAYS);
      grid.addRow(row++, name, value);
    }
    return grid;
  }

  @Override
  Entry.Baseline next(Head head) {
    Setup setup =
        before()
            .map(Entry.Baseline::setup)
            .orElseGet(() -> blame(reason, () -> desk().model().timeline().startOn(head.day())));
    return blame(
        reason,
        () ->
            new Entry.Baseline(
                head,
                setup,
                take(race),
                take(free),
                take(reason),
                before().flatMap(Entry.Baseline::rebuild)));
  }
}
