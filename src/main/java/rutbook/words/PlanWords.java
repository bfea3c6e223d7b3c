package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Range;
import rutbook.notebook.Setting;
import rutbook.notebook.StepId;
import rutbook.notebook.Tightening;
import rutbook.rebuild.Caution;
import rutbook.rebuild.Plan;
import rutbook.rebuild.ReturnItem;
import rutbook.rebuild.SettingReturn;
import rutbook.rebuild.Shortfall;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.rebuild.Target;
import rutbook.units.Dimension;

/** What the steps of a rebuild and the return to baseline say. */
public final class PlanWords {
  private static final String AREA = "Plan";

  private final Phrases phrases;
  private final ReadingWords readings;
  private final ChangeWords changes;

  public PlanWords(Phrases phrases) {
    this.phrases = phrases;
    this.readings = new ReadingWords(phrases);
    this.changes = new ChangeWords(phrases);
  }

  /** What is done, and to which setting and leg. */
  public String title(Step step) {
    String about = about(step);
    return about.isEmpty() ? what(step) : phrases.say(AREA, "about", what(step), about);
  }

  /** What is done, without saying to what. */
  public String what(Step step) {
    return counted("Kind." + step.kind().name(), step.setting());
  }

  /** An adjuster that counts from open or from a mark is turned the other way. */
  private String counted(String key, Optional<Setting> setting, Object... facts) {
    return setting
        .map(each -> key + "." + each.scale().datum().name())
        .flatMap(own -> phrases.sayIfKnown(AREA, own, facts))
        .orElseGet(() -> phrases.say(AREA, key, facts));
  }

  /** To which setting and leg it is done; empty where it is the whole bike. */
  public String about(Step step) {
    String leg = step.leg().map(phrases::name).orElse("");
    String setting = step.setting().map(readings::setting).orElse("");
    if (setting.isEmpty()) {
      return leg.isEmpty() ? "" : phrases.say(AREA, "leg", leg);
    }
    return leg.isEmpty() ? setting : phrases.say(AREA, "setting-leg", setting, leg);
  }

  /** Target, limits, total, count and torques of a step; safety limits in both unit systems. */
  public List<String> values(Step step) {
    List<String> said = new ArrayList<>();
    step.target().ifPresent(target -> addTarget(said, step, target));
    step.goal().wish().ifPresent(wish -> said.add(wish(step, wish)));
    step.goal().total().ifPresent(total -> said.add(phrases.say(AREA, "total", total)));
    if (step.setting().isPresent()) {
      Setting setting = step.setting().get();
      step.goal()
          .noted()
          .ifPresent(
              noted -> said.add(phrases.say(AREA, "noted", readings.reading(setting, noted))));
    }
    oil(step).ifPresent(said::add);
    step.goal().torques().forEach(each -> said.add(torque(each)));
    return said;
  }

  /** Which oil goes in at a step and how much of it per leg, in both systems of units. */
  public Optional<String> oil(Step step) {
    return step.goal()
        .oil()
        .map(
            oil ->
                step.setting()
                    .flatMap(setting -> step.target().map(target -> poured(step, setting, target)))
                    .map(much -> phrases.say(AREA, much.key(), oil.name(), much.said()))
                    .orElseGet(() -> phrases.say(AREA, "oil", oil.name())));
  }

  private record Poured(String key, String said) {}

  private Poured poured(Step step, Setting setting, Target target) {
    String said = target(setting, target);
    if (setting.dimension() != Dimension.VOLUME) {
      return new Poured("oil.level", said);
    }
    if (!step.ask().bothLegs()) {
      return new Poured("oil.leg", said);
    }
    return new Poured(target.reading().legsDiffer() ? "oil.legs" : "oil.each", said);
  }

  /** What is to be at hand of the oil for all legs; empty where none is named or none measured. */
  public Optional<String> oil(Plan plan) {
    return plan.oil()
        .map(
            oil ->
                plan.oilNeeded()
                    .map(
                        all ->
                            phrases.say(AREA, "oil.all", oil.name(), phrases.amounts().both(all)))
                    .orElseGet(() -> phrases.say(AREA, "oil", oil.name())));
  }

  /** A fastener with its torque in both systems. */
  public String torque(Tightening torque) {
    return phrases.say(AREA, "torque", torque.name(), phrases.amounts().both(torque.amount()));
  }

  /** What stands beside the number of a step: limits, shortfalls, what the notebook says. */
  public List<String> aside(Step step) {
    List<String> said = new ArrayList<>();
    step.goal().wish().ifPresent(wish -> said.add(phrases.sentence(wish(step, wish)) + "."));
    step.target()
        .flatMap(Target::limits)
        .ifPresent(limits -> said.add(phrases.sentence(limits(limits)) + "."));
    step.target()
        .ifPresent(target -> target.shortfalls().forEach(each -> said.add(shortfall(each))));
    step.goal()
        .total()
        .ifPresent(total -> said.add(phrases.sentence(phrases.say(AREA, "total", total)) + "."));
    step.setting()
        .flatMap(
            setting ->
                step.goal()
                    .noted()
                    .map(noted -> phrases.say(AREA, "noted", readings.reading(setting, noted))))
        .ifPresent(noted -> said.add(phrases.sentence(noted) + "."));
    return said;
  }

  /** A wish does not bind; what the manual has of a gas pressure does, in both systems of units. */
  private String wish(Step step, Range wish) {
    return step.kind() == StepKind.SHOP_GAS
        ? phrases.say(AREA, "manual", phrases.amounts().limits(wish))
        : phrases.say(AREA, "wish", wish);
  }

  /** How far a setting goes from where the shop left it; empty where it was in no shop. */
  public Optional<String> fromTheShop(Plan plan, Step step) {
    return step.setting()
        .filter(setting -> step.kind().places() && plan.done(step.id()).isEmpty())
        .filter(setting -> plan.done(StepId.finding(setting.id())).isPresent())
        .flatMap(setting -> plan.back().of(setting.id()))
        .filter(back -> !back.unknown())
        .map(
            back ->
                back.moved()
                    ? phrases.say(AREA, "left", moved(back))
                    : phrases.say(AREA, "left.there"))
        .map(said -> phrases.sentence(said) + ".");
  }

  private String moved(SettingReturn back) {
    return back.target()
        .limits()
        .map(changes::within)
        .orElse(changes)
        .change(back.setting(), back.now(), back.target().reading());
  }

  private String limits(Range limits) {
    return phrases.say(AREA, "limits", phrases.amounts().limits(limits));
  }

  /** What is to be set, in both systems of units and in none of them beyond its limits. */
  private String target(Setting setting, Target target) {
    ReadingWords inside = readings.within(target.limits());
    String mine = inside.reading(setting, target.reading());
    String other = inside.other(target.reading());
    return other.isEmpty() ? mine : phrases.say("Amounts", "both", mine, other);
  }

  private void addTarget(List<String> said, Step step, Target target) {
    String reading =
        step.setting()
            .map(setting -> target(setting, target))
            .orElseGet(() -> phrases.amounts().both(target.reading().amounts().get(0)));
    said.add(phrases.say(AREA, "target", reading));
    target.limits().ifPresent(limits -> said.add(limits(limits)));
    target.shortfalls().forEach(shortfall -> said.add(shortfall(shortfall)));
  }

  public String shortfall(Shortfall shortfall) {
    String setting =
        shortfall
            .leg()
            .map(
                leg ->
                    phrases.say(
                        AREA,
                        "setting-leg",
                        readings.setting(shortfall.setting()),
                        phrases.name(leg)))
            .orElseGet(() -> readings.setting(shortfall.setting()));
    return phrases.say(
        AREA,
        shortfall.wantedMore() ? "short.more" : "short.less",
        phrases.sentence(setting),
        phrases.amounts().both(shortfall.wanted()),
        shortfall.wantedMore()
            ? phrases.amounts().mostBoth(shortfall.held())
            : phrases.amounts().leastBoth(shortfall.held()),
        shortfall.missing());
  }

  public String caution(Caution caution) {
    return phrases.say(AREA, "Caution." + caution.name());
  }

  /** One item of the way back: re-referenced, put right or moved. */
  public String back(ReturnItem item) {
    SettingReturn back = item.what();
    String setting = phrases.sentence(readings.setting(back.setting()));
    if (item.action() == ReturnItem.Action.RE_REFERENCE) {
      String key = back.setting().role().isClicker() ? "re-reference" : "measure";
      return counted(key, Optional.of(back.setting()), setting);
    }
    String to =
        back.unknown()
            ? phrases.say(AREA, "target", target(back.setting(), back.target()))
            : moved(back);
    boolean first = item.action() == ReturnItem.Action.PUT_RIGHT;
    return phrases.say(AREA, first ? "outside-first" : "move", setting, to);
  }
}
