package rutbook.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rutbook.notebook.Carrier;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.units.Amount;
import rutbook.units.Display;
import rutbook.units.Unit;

/**
 * What a ruler shows of one setting: its limits, its step and the marks on it. Where two legs
 * differ, {@code otherLeg} is the right one.
 */
public record Ruler(
    Range limits,
    Amount step,
    boolean hasStops,
    Optional<Amount> reading,
    Optional<Amount> otherLeg,
    Marks marks) {

  /** The marks besides the reading. */
  public record Marks(
      Optional<Amount> baseline, Optional<Amount> previous, Optional<Amount> proposal) {
    public static final Marks NONE =
        new Marks(Optional.empty(), Optional.empty(), Optional.empty());
  }

  public Ruler {
    if (step.value().signum() <= 0 || step.dimension() != limits.least().dimension()) {
      throw new IllegalArgumentException("a ruler with steps of " + step);
    }
  }

  /** A ruler of the setting with its reading and nothing else. */
  public static Ruler of(Sheet sheet, Setting setting, Reading reading) {
    Optional<Amount> other =
        reading.legsDiffer() ? reading.leg(Side.RIGHT).known() : Optional.empty();
    return new Ruler(
        sheet.limits(setting),
        setting.scale().step(),
        setting.scale().isGrid(),
        first(reading),
        other,
        Marks.NONE);
  }

  /** A ruler of one leg, for settings that are counted leg by leg. */
  public static Ruler ofLeg(Sheet sheet, Setting setting, Reading reading, Side side) {
    Reading leg = new Reading.One(reading.leg(side));
    return of(sheet, setting, setting.carrier() == Carrier.PAIR ? leg : reading);
  }

  /** The left leg, or the right where only that is known. */
  private static Optional<Amount> first(Reading reading) {
    return reading.amounts().stream().findFirst();
  }

  public Ruler withBaseline(Reading baseline) {
    return with(new Marks(first(baseline), marks.previous(), marks.proposal()));
  }

  public Ruler withPrevious(Reading previous) {
    return with(new Marks(marks.baseline(), first(previous), marks.proposal()));
  }

  public Ruler withProposal(Reading proposal) {
    return with(new Marks(marks.baseline(), marks.previous(), first(proposal)));
  }

  public Ruler withReading(Amount amount) {
    return new Ruler(limits, step, hasStops, Optional.of(amount), otherLeg, marks);
  }

  /**
   * The same line with its steps in the unit that the rider sees: round numbers there, about as
   * fine as those of the sheet. The limits stay exactly where they are.
   */
  public Ruler in(Display display) {
    Unit unit = display.unit(step.dimension());
    if (unit == step.unit()) {
      return this;
    }
    Amount round = Ticks.round(Amount.of(0, unit).plus(step));
    return new Ruler(limits, round, hasStops, reading, otherLeg, marks);
  }

  private Ruler with(Marks newMarks) {
    return new Ruler(limits, step, hasStops, reading, otherLeg, newMarks);
  }

  /** Everything that has a place on the line. */
  List<Amount> places() {
    return Stream.of(reading, otherLeg, marks.baseline(), marks.previous(), marks.proposal())
        .flatMap(Optional::stream)
        .toList();
  }
}
