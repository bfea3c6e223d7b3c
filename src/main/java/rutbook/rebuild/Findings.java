package rutbook.rebuild;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rutbook.figures.FillRoom;
import rutbook.notebook.Bounds;
import rutbook.notebook.Entered;
import rutbook.notebook.Legs;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.units.Amount;

/** Reads what was entered at a step against the sheet, the notebook and the step's target. */
final class Findings {
  private final Sheet sheet;
  private final ReturnToBaseline back;
  private final Step step;
  private final List<Finding> found = new ArrayList<>();

  private Findings(Sheet sheet, ReturnToBaseline back, Step step) {
    this.sheet = sheet;
    this.back = back;
    this.step = step;
  }

  /**
   * What the entry of a step shows, beside what was entered at the others.
   *
   * @param back says how the legs of a setting are meant to differ, where they are
   */
  static List<Finding> of(
      Sheet sheet, ReturnToBaseline back, Step step, Map<StepId, StepDone> done) {
    Findings findings = new Findings(sheet, back, step);
    findings.read(done.get(step.id()).entered());
    if (step.kind() == StepKind.FILL || step.kind() == StepKind.CARTRIDGE_FILL) {
      findings.otherLeg(done);
    }
    return List.copyOf(findings.found);
  }

  private void read(Entered entered) {
    if (entered instanceof Entered.Skipped skipped) {
      found.add(new Finding.Skipped(step.id(), step.kind(), skipped.why()));
      return;
    }
    Optional<Reading> reading = Ask.reading(entered);
    if (!step.ask().accepts(entered) || reading.isPresent() && !reading.get().isKnown()) {
      found.add(new Finding.Incomplete(step.id()));
      return;
    }
    if (reading.isEmpty()) {
      return;
    }
    if (step.kind() == StepKind.TOTAL) {
      total(reading.get());
      return;
    }
    step.setting().ifPresent(setting -> limits(setting, reading.get()));
    if (found.isEmpty() && !step.kind().finds()) {
      step.setting().ifPresent(setting -> room(setting, reading.get()));
    }
    if (step.kind() == StepKind.COUNT) {
      againstTheNotebook(reading.get());
    }
    if (step.kind() == StepKind.PLACE_FILL) {
      step.setting().ifPresent(setting -> legs(setting, reading.get()));
    }
    step.target()
        .ifPresentOrElse(target -> offTarget(target, reading.get()), () -> wish(reading.get()));
  }

  private List<Optional<Side>> legs(Reading reading) {
    return reading instanceof Reading.Pair
        ? List.of(Optional.of(Side.LEFT), Optional.of(Side.RIGHT))
        : List.of(step.leg());
  }

  private void total(Reading reading) {
    Amount counted = reading.amounts().get(0);
    Setting setting = step.setting().orElseThrow();
    step.goal()
        .total()
        .filter(expected -> beyond(expected, counted, Tolerances.total(setting)))
        .ifPresent(
            expected ->
                found.add(new Finding.TotalOff(step.id(), setting, step.leg(), expected, counted)));
  }

  private static boolean beyond(Amount expected, Amount entered, Amount tolerance) {
    Amount off = entered.minus(expected);
    return off.withValue(off.value().abs()).compareQuantity(tolerance) > 0;
  }

  /** What is noted before tear-down or after the shop was found; everything else is chosen. */
  private void limits(Setting setting, Reading reading) {
    Range limits = sheet.limits(setting);
    boolean chosen = !step.kind().finds();
    for (Optional<Side> leg : legs(reading)) {
      Amount amount = ReturnToBaseline.at(reading, leg).orElseThrow();
      boolean refused =
          chosen ? Bounds.refusal(sheet, setting, amount).isPresent() : !limits.contains(amount);
      if (refused) {
        found.add(new Finding.OutsideLimits(step.id(), setting, leg, amount, limits, chosen));
      }
    }
  }

  /** By a measured volume only: an estimate never overrules the manual. */
  private void room(Setting setting, Reading reading) {
    for (FillRoom room : FillRoom.planned(sheet, setting.id(), reading)) {
      boolean here = step.leg().map(leg -> leg == room.leg()).orElse(true);
      if (here && room.verdict() == FillRoom.Verdict.REFUSED) {
        found.add(new Finding.NoRoom(step.id(), setting, room));
      }
    }
  }

  private void againstTheNotebook(Reading counted) {
    Optional<Reading> noted = step.goal().noted();
    if (noted.isEmpty()) {
      return;
    }
    for (Optional<Side> leg : legs(counted)) {
      Optional<Amount> before = ReturnToBaseline.at(noted.get(), leg);
      Amount now = ReturnToBaseline.at(counted, leg).orElseThrow();
      if (before.isPresent() && !before.get().sameQuantity(now)) {
        found.add(
            new Finding.CountDiffers(
                step.id(), step.setting().orElseThrow(), leg, before.get(), now));
      }
    }
  }

  private void legs(Setting setting, Reading reading) {
    Optional<Reading> meant = back.of(setting.id()).map(each -> each.target().reading());
    if (Legs.differ(setting, reading, meant)) {
      List<Amount> amounts = reading.amounts();
      found.add(
          new Finding.LegsDiffer(
              step.id(), setting, amounts.get(0), amounts.get(1), Legs.tolerance(setting)));
    }
  }

  /** The second leg is compared with the first while it is still open. */
  private void otherLeg(Map<StepId, StepDone> done) {
    if (!step.leg().equals(Optional.of(Side.RIGHT)) || found.stream().anyMatch(Finding::again)) {
      return;
    }
    Setting setting = step.setting().orElseThrow();
    StepDone first = done.get(Step.id(step.kind(), Subject.of(setting, Side.LEFT)));
    Optional<Amount> left =
        first == null
            ? Optional.empty()
            : Ask.reading(first.entered())
                .flatMap(reading -> reading.leg(Side.LEFT).known())
                .filter(amount -> amount.dimension() == setting.dimension());
    Optional<Amount> right =
        Ask.reading(done.get(step.id()).entered())
            .flatMap(reading -> reading.leg(Side.RIGHT).known());
    if (left.isPresent() && right.isPresent()) {
      legs(setting, Reading.of(left.get(), right.get()));
    }
  }

  private void wish(Reading reading) {
    Amount measured = reading.amounts().get(0);
    step.goal()
        .wish()
        .filter(wish -> !wish.contains(measured))
        .ifPresent(
            wish -> found.add(new Finding.OutsideWish(step.id(), step.kind(), measured, wish)));
  }

  private void offTarget(Target target, Reading reading) {
    for (Optional<Side> leg : legs(reading)) {
      Optional<Amount> wanted = ReturnToBaseline.at(target.reading(), leg);
      Amount entered = ReturnToBaseline.at(reading, leg).orElseThrow();
      if (wanted.isPresent() && !target.reached(wanted.get(), entered)) {
        found.add(
            new Finding.OffTarget(
                step.id(), step.kind(), step.setting(), leg, wanted.get(), entered));
      }
    }
  }
}
