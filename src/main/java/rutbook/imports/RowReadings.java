package rutbook.imports;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.imports.NotTaken.Why;
import rutbook.notebook.Bounds;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Value;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Amount;
import rutbook.units.AmountException;
import rutbook.units.AmountText;
import rutbook.units.Duration;

/** What one row of a spreadsheet of setups says of the settings, and which of its cells nothing. */
final class RowReadings {
  private final Grid grid;
  private final SetupMapping mapping;
  private final Grid.Row row;
  private final Setup before;
  private final Map<Setting, Reading> readings = new LinkedHashMap<>();
  private final List<NotTaken> bad = new ArrayList<>();
  private Optional<Amount> meter = Optional.empty();

  private RowReadings(Grid grid, SetupMapping mapping, Grid.Row row, Setup before) {
    this.grid = grid;
    this.mapping = mapping;
    this.row = row;
    this.before = before;
  }

  /**
   * @param before what was on the bike, for a leg that the row does not name
   */
  static RowReadings of(Grid grid, SetupMapping mapping, Grid.Row row, Sheet sheet, Setup before) {
    RowReadings readings = new RowReadings(grid, mapping, row, before);
    for (int column = 0; column < mapping.columns().size(); column++) {
      if (!Cells.isEmpty(row.cells().get(column))) {
        readings.read(column, sheet);
      }
    }
    return readings;
  }

  private void read(int column, Sheet sheet) {
    SetupColumn meant = mapping.columns().get(column);
    if (meant instanceof SetupColumn.OfSetting of) {
      sheet.setting(of.setting()).ifPresent(setting -> setting(column, of, setting));
    } else if (meant instanceof SetupColumn.Meter) {
      String cell = row.cells().get(column);
      try {
        meter = Optional.of(AmountText.parse(cell, Duration.HOUR, mapping.decimals().locale()));
      } catch (AmountException noHours) {
        bad(column, grid.heading(column), noHours);
      }
    }
  }

  private void setting(int column, SetupColumn.OfSetting of, Setting setting) {
    String cell = row.cells().get(column);
    try {
      Amount amount = Cells.amount(cell, grid.heading(column), setting, mapping.decimals());
      readings.put(setting, with(of(setting), of, amount));
    } catch (AmountException noAmount) {
      bad(column, setting.name(), noAmount);
    }
  }

  private void bad(int column, String of, AmountException because) {
    String name = of.isEmpty() ? Integer.toString(column + 1) : of;
    bad.add(
        new NotTaken(
            row.line(), Why.BAD_READING, row.cells().get(column), name, Optional.of(because)));
  }

  private static Reading with(Reading known, SetupColumn.OfSetting of, Amount amount) {
    if (known instanceof Reading.Pair pair && of.leg().isPresent()) {
      return switch (of.leg().get()) {
        case LEFT -> new Reading.Pair(Value.of(amount), pair.right());
        case RIGHT -> new Reading.Pair(pair.left(), Value.of(amount));
      };
    }
    return known instanceof Reading.Pair ? Reading.bothLegs(amount) : Reading.of(amount);
  }

  boolean isEmpty() {
    return readings.isEmpty();
  }

  /** The reading of the row, or else what was noted before. */
  Reading of(Setting setting) {
    return Optional.ofNullable(readings.get(setting))
        .or(() -> before.reading(setting.id()))
        .orElseGet(() -> Reading.unknown(setting.carrier(), WhyUnknown.NOT_NOTED));
  }

  Optional<Amount> meter() {
    return meter;
  }

  List<NotTaken> bad() {
    return bad;
  }

  /** Why readings of the row may not count as set. */
  List<NotebookException> beyond(Sheet sheet) {
    List<NotebookException> beyond = new ArrayList<>();
    readings.forEach(
        (setting, reading) ->
            reading.amounts().stream()
                .flatMap(amount -> Bounds.refusal(sheet, setting, amount).stream())
                .findFirst()
                .ifPresent(beyond::add));
    return beyond;
  }
}
