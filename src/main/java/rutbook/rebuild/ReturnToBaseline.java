package rutbook.rebuild;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rutbook.notebook.Bounds;
import rutbook.notebook.Carrier;
import rutbook.notebook.Placed;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Setup;
import rutbook.notebook.Sheet;
import rutbook.notebook.Side;
import rutbook.notebook.WhyUnknown;
import rutbook.units.Amount;

/**
 * The way from where every setting is to the baseline, held inside the limits of the sheet in
 * force, in trade order.
 *
 * @param settings every setting that the baseline knows and the sheet still has, and what was found
 *     outside its limits, in trade order
 * @param noTarget the other settings of the sheet, for which the baseline has no value
 */
public record ReturnToBaseline(List<SettingReturn> settings, List<Setting> noTarget) {
  public ReturnToBaseline {
    settings = List.copyOf(settings);
    noTarget = List.copyOf(noTarget);
  }

  public static ReturnToBaseline of(Sheet sheet, Setup baseline, Setup now, Advisor advisor) {
    List<SettingReturn> settings = new ArrayList<>();
    List<Setting> noTarget = new ArrayList<>();
    for (Setting setting : sheet.settings()) {
      Optional<Reading> wanted =
          baseline
              .reading(setting.id())
              .filter(reading -> !reading.amounts().isEmpty())
              .or(() -> insideAgain(sheet, setting, now));
      if (wanted.isEmpty()) {
        noTarget.add(setting);
      } else {
        settings.add(back(sheet, setting, wanted.get(), now));
      }
    }
    Setup reached = reached(settings, now);
    settings.replaceAll(each -> advised(sheet, each, reached, advisor));
    settings.sort(Comparator.comparingInt(each -> TradeOrder.rank(each.setting().role())));
    return new ReturnToBaseline(settings, noTarget);
  }

  /** What was found outside is put right even where no baseline says where it belongs. */
  private static Optional<Reading> insideAgain(Sheet sheet, Setting setting, Setup now) {
    return now.reading(setting.id())
        .filter(reading -> !Bounds.isInside(sheet, setting, reading))
        .map(reading -> Bounds.hold(sheet, setting, reading));
  }

  private static SettingReturn back(Sheet sheet, Setting setting, Reading wanted, Setup now) {
    Reading stands =
        now.reading(setting.id())
            .orElseGet(() -> Reading.unknown(setting.carrier(), WhyUnknown.NOT_NOTED));
    Target target = target(sheet, setting, wanted);
    boolean outside = !Bounds.isInside(sheet, setting, stands);
    return new SettingReturn(
        setting, stands, wanted, target, moves(setting, stands, target), outside, List.of());
  }

  /** With what is to be said of a target that today's limits hold. */
  private static SettingReturn advised(
      Sheet sheet, SettingReturn back, Setup reached, Advisor advisor) {
    if (back.shortfalls().isEmpty()) {
      return back;
    }
    List<Remark> remarks = new ArrayList<>();
    for (Remark remark : advisor.onShortfall(sheet, reached, back.setting(), back.wanted())) {
      bounded(sheet, remark).ifPresent(remarks::add);
    }
    return back.with(remarks);
  }

  /** The target for a wanted reading: held inside today's limits, with what that leaves short. */
  static Target target(Sheet sheet, Setting setting, Reading wanted) {
    Reading held = Bounds.hold(sheet, setting, wanted);
    List<Shortfall> shortfalls = new ArrayList<>();
    for (Optional<Side> leg : legs(setting)) {
      Optional<Amount> want = at(wanted, leg);
      Optional<Amount> have = at(held, leg);
      if (want.isPresent() && have.isPresent() && !want.get().sameQuantity(have.get())) {
        shortfalls.add(new Shortfall(setting, leg, want.get(), have.get()));
      }
    }
    return new Target(held, Optional.of(sheet.limits(setting)), Tolerances.of(setting), shortfalls);
  }

  private static List<LegMove> moves(Setting setting, Reading now, Target target) {
    List<LegMove> moves = new ArrayList<>();
    for (Optional<Side> leg : legs(setting)) {
      at(target.reading(), leg)
          .ifPresent(to -> moves.add(new LegMove(setting, leg, at(now, leg), to)));
    }
    return moves;
  }

  /** Left and right where each leg has its own value, otherwise one place without a side. */
  static List<Optional<Side>> legs(Setting setting) {
    return setting.carrier() == Carrier.PAIR
        ? List.of(Optional.of(Side.LEFT), Optional.of(Side.RIGHT))
        : List.of(Optional.empty());
  }

  static Optional<Amount> at(Reading reading, Optional<Side> leg) {
    return reading.leg(leg.orElse(Side.LEFT)).known();
  }

  /** What makes up for a shortfall is itself held inside its limits, or left out. */
  private static Optional<Remark> bounded(Sheet sheet, Remark remark) {
    if (!(remark instanceof Remark.MakesUp makesUp)) {
      return Optional.of(remark);
    }
    return sheet
        .setting(makesUp.setting().id())
        .map(setting -> Bounds.hold(sheet, setting, makesUp.to()))
        .filter(held -> !held.sameAs(makesUp.from()))
        .map(makesUp::held);
  }

  public Optional<SettingReturn> of(SettingId id) {
    return settings.stream().filter(each -> each.setting().id().equals(id)).findFirst();
  }

  public List<Shortfall> shortfalls() {
    return settings.stream().flatMap(each -> each.shortfalls().stream()).toList();
  }

  /** The setup that the bike has when every target is met; other settings as they are now. */
  public Setup reached(Setup now) {
    return reached(settings, now);
  }

  private static Setup reached(List<SettingReturn> settings, Setup now) {
    Setup setup = now;
    for (SettingReturn each : settings) {
      setup = setup.with(Placed.set(each.setting().id(), each.target().reading()));
    }
    return setup;
  }

  /** Everything to be done: what was found outside first, then in trade order. */
  public List<ReturnItem> items() {
    List<ReturnItem> items = new ArrayList<>(putRight());
    Stream.concat(
            references().stream(),
            moving().stream().map(each -> new ReturnItem(ReturnItem.Action.MOVE, each)))
        .sorted(Comparator.comparingInt(ReturnToBaseline::rank))
        .forEach(items::add);
    return List.copyOf(items);
  }

  private static int rank(ReturnItem item) {
    boolean counting =
        item.action() == ReturnItem.Action.RE_REFERENCE && item.what().setting().scale().isGrid();
    return counting ? TradeOrder.RE_REFERENCE : TradeOrder.rank(item.what().setting().role());
  }

  private List<ReturnItem> putRight() {
    return settings.stream()
        .filter(SettingReturn::foundOutside)
        .map(each -> new ReturnItem(ReturnItem.Action.PUT_RIGHT, each))
        .toList();
  }

  private List<ReturnItem> references() {
    return settings.stream()
        .filter(each -> !each.foundOutside() && each.unknown())
        .map(each -> new ReturnItem(ReturnItem.Action.RE_REFERENCE, each))
        .toList();
  }

  private List<SettingReturn> moving() {
    return settings.stream().filter(each -> each.moved() && !each.foundOutside()).toList();
  }

  /** All in one go, then the confirm moto: after a rebuild. */
  public List<Stage> allAtOnce() {
    return items().isEmpty() ? List.of() : List.of(new Stage(items()));
  }

  /**
   * One setting and one moto at a time, when the bike has drifted: first what has to be put right
   * or found out, in one go, then one setting a stage in the order that was asked for.
   *
   * @throws IllegalArgumentException when the order loses, adds or repeats a setting
   */
  public List<Stage> oneAtATime(ReturnOrder order) {
    List<ReturnItem> first = new ArrayList<>(putRight());
    first.addAll(references());
    for (SettingReturn each : moving()) {
      if (each.unknown()) {
        first.add(new ReturnItem(ReturnItem.Action.MOVE, each));
      }
    }
    List<SettingReturn> rest = moving().stream().filter(each -> !each.unknown()).toList();
    List<SettingReturn> chosen = order.order(rest);
    if (chosen.size() != rest.size() || !new HashSet<>(chosen).containsAll(rest)) {
      throw new IllegalArgumentException(
          "order of " + rest.size() + " settings gave " + chosen.size());
    }
    List<Stage> stages = new ArrayList<>();
    if (!first.isEmpty()) {
      stages.add(new Stage(first));
    }
    for (SettingReturn each : chosen) {
      stages.add(new Stage(List.of(new ReturnItem(ReturnItem.Action.MOVE, each))));
    }
    return List.copyOf(stages);
  }
}
