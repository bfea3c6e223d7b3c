package rutbook.figures;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.units.Amount;
import rutbook.units.Dimension;
import rutbook.units.Length;

/**
 * Steering at every height of the fork that the sheet allows, as it stands and at another sag.
 *
 * @param present tube above the clamp as it is set
 * @param rows from the least tube to the most, evenly spaced, the present one among them
 */
public record SteeringSweep(Setting setting, Amount present, List<Row> rows) {
  private static final int MOST_ROWS = 61;

  public SteeringSweep {
    rows = List.copyOf(rows);
  }

  /** Steering with so much tube above the clamp. */
  public record Row(Amount tube, SteeringFigures steering) {}

  /**
   * Steering over the limits of the tube above the clamp.
   *
   * @param rearSagMore more sag at the rear than the sheet's geometry stands at; within ±60 mm
   */
  public static Figure<SteeringSweep> of(Sheet sheet, Setup setup, Amount rearSagMore) {
    Optional<Setting> setting =
        sheet.settings(Role.TUBE_ABOVE_CLAMP).stream()
            .filter(each -> each.dimension() == Dimension.LENGTH)
            .findFirst();
    if (setting.isEmpty()) {
      return Figure.lacks(Need.of(Quantity.TUBE_ABOVE_CLAMP, Need.Why.NOT_ON_THE_SHEET));
    }
    Optional<Amount> present =
        setup
            .reading(setting.get().id())
            .map(Reading::amounts)
            .flatMap(all -> all.stream().findFirst());
    if (present.isEmpty()) {
      return Figure.lacks(Need.of(Quantity.TUBE_ABOVE_CLAMP, Need.Why.NOT_NOTED));
    }
    return rows(sheet, sheet.limits(setting.get()), present.get(), rearSagMore)
        .map(rows -> new SteeringSweep(setting.get(), present.get(), rows));
  }

  private static Figure<List<Row>> rows(
      Sheet sheet, Range limits, Amount present, Amount rearSagMore) {
    Figure<List<Row>> rows = Figure.of(List.of());
    for (Amount tube : tubes(limits, present)) {
      Figure<SteeringFigures> steering =
          SteeringFigures.after(sheet, tube.minus(present), rearSagMore);
      rows =
          rows.then(
              before ->
                  steering.map(
                      figures -> {
                        List<Row> all = new ArrayList<>(before);
                        all.add(new Row(tube, figures));
                        return all;
                      }));
    }
    return rows;
  }

  /** Whole millimetres within the limits, wider apart where there are many, and the present one. */
  private static List<Amount> tubes(Range limits, Amount present) {
    double least = limits.least().doubleIn(Length.MILLIMETRE);
    double most = limits.most().doubleIn(Length.MILLIMETRE);
    int apart = (int) Math.max(1, Math.ceil((most - least) / (MOST_ROWS - 1)));
    List<Amount> tubes = new ArrayList<>();
    for (double at = Math.ceil(least); at <= most && tubes.size() < MOST_ROWS; at += apart) {
      tubes.add(new Amount(BigDecimal.valueOf((long) at), Length.MILLIMETRE));
    }
    if (tubes.stream().noneMatch(present::sameQuantity)) {
      tubes.add(present);
      tubes.sort(Amount::compareQuantity);
    }
    return tubes;
  }
}
