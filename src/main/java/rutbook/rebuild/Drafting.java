package rutbook.rebuild;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rutbook.notebook.Carrier;
import rutbook.notebook.Datum;
import rutbook.notebook.Entry;
import rutbook.notebook.Fastener;
import rutbook.notebook.Job;
import rutbook.notebook.Oil;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.Tightening;
import rutbook.notebook.Value;
import rutbook.units.Amount;

/** What the parts of a plan share while it is drawn up: targets, torques and who carries what. */
final class Drafting {
  private final PlanFrom from;

  /** The return as it was planned, before anything was entered: it decides which steps appear. */
  private final ReturnToBaseline planned;

  Drafting(PlanFrom from, Advisor advisor) {
    this.from = from;
    this.planned =
        ReturnToBaseline.of(from.sheet(), from.baseline().setup(), from.stripped(), advisor);
  }

  Sheet sheet() {
    return from.sheet();
  }

  Job job() {
    return from.job();
  }

  Entry.Baseline baseline() {
    return from.baseline();
  }

  PlanFrom from() {
    return from;
  }

  List<Setting> settings(Role... roles) {
    List<Role> wanted = Arrays.asList(roles);
    return sheet().settings().stream().filter(each -> wanted.contains(each.role())).toList();
  }

  List<Setting> clickers(boolean front) {
    return front
        ? settings(Role.FORK_COMPRESSION, Role.FORK_HIGH_SPEED_COMPRESSION, Role.FORK_REBOUND)
        : settings(Role.SHOCK_LOW_SPEED, Role.SHOCK_HIGH_SPEED, Role.SHOCK_REBOUND);
  }

  /** Adjusters that have a closed or open end to count from. */
  List<Setting> countable(boolean front) {
    return clickers(front).stream()
        .filter(
            each ->
                each.scale().datum() == Datum.OUT_FROM_CLOSED
                    || each.scale().datum() == Datum.IN_FROM_OPEN)
        .toList();
  }

  /** Whether the job unsettles a setting, or it stands elsewhere than the baseline wants it. */
  boolean isToBePlaced(Setting setting) {
    return from.unsettles(setting)
        || planned.of(setting.id()).map(SettingReturn::moved).orElse(false);
  }

  static boolean carries(Setting setting, Side leg) {
    return switch (setting.carrier()) {
      case PAIR, SINGLE -> true;
      case LEFT -> leg == Side.LEFT;
      case RIGHT -> leg == Side.RIGHT;
    };
  }

  /** Whether one leg alone has the setting, so that its step there is the step that places it. */
  static boolean inOneLeg(Setting setting) {
    return setting.carrier() == Carrier.LEFT || setting.carrier() == Carrier.RIGHT;
  }

  /** Where a setting goes: the baseline held inside the limits; a fill without one goes nominal. */
  Optional<Target> target(Setting setting) {
    if (isRenewedSpring(setting)) {
      return Optional.empty();
    }
    return planned.of(setting.id()).map(SettingReturn::target).or(() -> nominal(setting));
  }

  private boolean isRenewedSpring(Setting setting) {
    return job().renewed().contains(Renewed.SPRING)
        && (setting.role() == Role.FORK_SPRING && job().fork()
            || setting.role() == Role.SHOCK_SPRING && job().shock());
  }

  private Optional<Target> nominal(Setting setting) {
    return sheet()
        .chamber(setting)
        .flatMap(chamber -> chamber.nominal())
        .map(
            amount ->
                setting.carrier() == Carrier.PAIR ? Reading.bothLegs(amount) : Reading.of(amount))
        .map(reading -> ReturnToBaseline.target(sheet(), setting, reading));
  }

  /** The target of one leg by itself. */
  Optional<Target> target(Setting setting, Side leg) {
    return target(setting)
        .filter(target -> target.reading().leg(leg).known().isPresent())
        .map(
            target ->
                new Target(
                    new Reading.One(target.reading().leg(leg)),
                    target.limits(),
                    target.tolerance(),
                    target.shortfalls().stream()
                        .filter(each -> each.leg().map(leg::equals).orElse(true))
                        .toList()));
  }

  private List<Remark> remarks(Setting setting) {
    return planned.of(setting.id()).map(SettingReturn::remarks).orElse(List.of());
  }

  /** The oil of the job, for what is filled with it. */
  private Optional<Oil> oil(Setting setting) {
    return isOil(setting) ? from.oil() : Optional.empty();
  }

  private static boolean isOil(Setting setting) {
    return setting.role() == Role.FORK_OIL || setting.role() == Role.FORK_CARTRIDGE_OIL;
  }

  /** The step that puts a setting where it belongs, whatever its legs. */
  Step placing(StepKind kind, Setting setting) {
    Ask ask = ask(setting, setting.carrier() == Carrier.PAIR);
    Goal goal =
        Goal.NONE
            .with(target(setting))
            .withNoted(job().before().reading(setting.id()))
            .remarked(remarks(setting))
            .withOil(oil(setting));
    return Step.of(kind, subject(setting)).with(goal).asking(ask);
  }

  private static Subject subject(Setting setting) {
    return switch (setting.carrier()) {
      case PAIR, SINGLE -> Subject.of(setting);
      case LEFT -> Subject.of(setting, Side.LEFT);
      case RIGHT -> Subject.of(setting, Side.RIGHT);
    };
  }

  private static Ask ask(Setting setting, boolean bothLegs) {
    Ask ask =
        setting.scale().isGrid()
            ? Ask.count(setting.scale().step().unit(), bothLegs)
            : Ask.measure(setting.scale().step().unit(), bothLegs);
    return isOil(setting) ? ask.withInstrument() : ask;
  }

  /**
   * A step on one leg, with the leg's own target; it places the setting if only that leg has it.
   */
  Step onLeg(StepKind kind, StepKind placing, Setting setting, Side leg) {
    if (inOneLeg(setting)) {
      return placing(placing, setting);
    }
    Goal goal =
        Goal.NONE.with(target(setting, leg)).remarked(remarks(setting)).withOil(oil(setting));
    return Step.of(kind, Subject.of(setting, leg)).with(goal).asking(ask(setting, false));
  }

  /** Counting a re-referenced adjuster from stop to stop, then out to where it belongs. */
  Step total(Setting setting, Optional<Side> leg) {
    Optional<Amount> total =
        setting.scale().total().isPresent()
            ? Optional.of(
                Amount.of(setting.scale().total().getAsInt(), setting.scale().step().unit()))
            : Optional.empty();
    Optional<Target> target = leg.isPresent() ? target(setting, leg.get()) : target(setting);
    Subject subject =
        leg.map(side -> Subject.of(setting, side)).orElseGet(() -> Subject.of(setting));
    return Step.of(StepKind.TOTAL, subject)
        .with(Goal.NONE.with(target).withTotal(total))
        .asking(Ask.count(setting.scale().step().unit(), false));
  }

  /** Counting before anything comes apart, against what the notebook says. */
  Step count(Setting setting) {
    return Step.of(StepKind.COUNT, Subject.of(setting))
        .with(Goal.NONE.withNoted(job().before().reading(setting.id())))
        .asking(Ask.count(setting.scale().step().unit(), setting.carrier() == Carrier.PAIR));
  }

  /** Noting what a setting reads before anything comes apart. */
  Step note(StepKind kind, Setting setting) {
    return Step.of(kind, Subject.of(setting))
        .with(Goal.NONE.withNoted(job().before().reading(setting.id())))
        .asking(ask(setting, setting.carrier() == Carrier.PAIR));
  }

  /** A step with the torques of the sheet, or the caution that the sheet has none. */
  Step torqued(StepKind kind, Subject subject, Fastener... fasteners) {
    List<Tightening> torques = new ArrayList<>();
    Stream.of(fasteners).forEach(each -> torques.addAll(sheet().torques(each)));
    Step step = Step.of(kind, subject);
    return torques.isEmpty()
        ? step.cautioned(Caution.TORQUE_NOT_ON_SHEET)
        : step.with(Goal.NONE.withTorques(torques));
  }

  /** A target without limits: what the baseline's sag was. */
  static Goal sag(Optional<Amount> atBaseline) {
    return Goal.NONE.with(
        atBaseline.map(
            sag ->
                new Target(
                    new Reading.One(Value.of(sag)), Optional.empty(), Tolerances.SAG, List.of())));
  }
}
