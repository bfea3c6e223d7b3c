package rutbook.words;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rutbook.compare.SettingHistory;
import rutbook.drawing.StepLine;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.units.Dimension;
import rutbook.units.Unit;

/** A setting over time as a step line, in the rider's units and with the months below it. */
public final class SeasonWords {
  private final Phrases phrases;

  public SeasonWords(Phrases phrases) {
    this.phrases = phrases;
  }

  /** The steps that can be drawn: those of which a leg at least is known. */
  public List<SettingHistory.Step> drawn(SettingHistory history) {
    return history.steps().stream()
        .filter(step -> value(history.setting(), step.reading()).isPresent())
        .toList();
  }

  /**
   * The line of a setting; both legs are one value, their mean.
   *
   * @param history with at least one step that can be drawn
   * @param end up to where the last reading holds
   */
  public StepLine.Season season(SettingHistory history, LocalDate end) {
    Setting setting = history.setting();
    List<StepLine.Step> steps = new ArrayList<>();
    for (SettingHistory.Step step : drawn(history)) {
      steps.add(
          new StepLine.Step(step.day().toEpochDay(), value(setting, step.reading()).orElseThrow()));
    }
    List<StepLine.Mark> marks = new ArrayList<>();
    for (SettingHistory.Mark mark : history.marks()) {
      double wanted =
          mark.reading()
              .map(reading -> value(setting, reading).orElse(Double.NaN))
              .orElse(Double.NaN);
      StepLine.MarkKind kind = StepLine.MarkKind.valueOf(mark.kind().name());
      marks.add(new StepLine.Mark(mark.day().toEpochDay(), kind, wanted));
    }
    LocalDate begin = history.steps().get(0).day();
    return new StepLine.Season(
        steps,
        marks,
        months(begin, end),
        end.toEpochDay(),
        unit(setting).symbol(),
        phrases.amounts().numerals(),
        setting.dimension() == Dimension.TURNS);
  }

  private List<StepLine.Tick> months(LocalDate begin, LocalDate end) {
    List<StepLine.Tick> ticks = new ArrayList<>();
    for (YearMonth month = YearMonth.from(begin);
        !month.atDay(1).isAfter(end);
        month = month.plusMonths(1)) {
      ticks.add(new StepLine.Tick(month.atDay(1).toEpochDay(), phrases.days().month(month)));
    }
    return ticks;
  }

  private Unit unit(Setting setting) {
    return phrases.display().unit(setting.dimension());
  }

  private OptionalDouble value(Setting setting, Reading reading) {
    Unit unit = unit(setting);
    return reading.amounts().stream()
        .filter(amount -> amount.dimension() == unit.dimension())
        .mapToDouble(amount -> amount.doubleIn(unit))
        .average();
  }
}
