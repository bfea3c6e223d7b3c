package rutbook.json;

import java.util.List;
import rutbook.notebook.Fastener;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Side;
import rutbook.notebook.Symptom;
import rutbook.notebook.Tightening;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Caution;
import rutbook.rebuild.DoneWhen;
import rutbook.rebuild.Place;
import rutbook.rebuild.Plan;
import rutbook.rebuild.Remark;
import rutbook.rebuild.ReturnItem;
import rutbook.rebuild.Shortfall;
import rutbook.rebuild.Step;
import rutbook.rebuild.StepKind;
import rutbook.rebuild.Target;
import rutbook.rebuild.Tool;

/** What {@code rebuild} answers: the steps in working order, and the way back to the baseline. */
public final class RebuildAnswer {
  private static final Facts<Shortfall> SHORTFALL =
      Facts.of(Shortfall.class)
          .with("setting", SettingFacts.SETTING, Shortfall::setting)
          .ifKnown("leg", Words.of(Side.class), Shortfall::leg)
          .with("wanted", AmountFacts.AMOUNT, Shortfall::wanted)
          .with("held", AmountFacts.AMOUNT, Shortfall::held)
          .with("missing", AmountFacts.STEP, Shortfall::missing);

  private static final Facts<Target> TARGET =
      Facts.of(Target.class)
          .with("reading", SettingFacts.READING, Target::reading)
          .ifKnown("limits", AmountFacts.LIMITS, Target::limits)
          .with("tolerance", AmountFacts.STEP, Target::tolerance)
          .list("shortfalls", SHORTFALL, Target::shortfalls);

  private static final Facts<Tightening> TORQUE =
      Facts.line(Tightening.class)
          .with("fastener", Words.of(Fastener.class), Tightening::fastener)
          .with("name", Texts.TEXT, Tightening::name)
          .with("torque", AmountFacts.AMOUNT, Tightening::amount)
          .with("source", Texts.TEXT, Tightening::source);

  static final FactKinds<Remark> REMARK =
      new FactKinds<Remark>()
          .add(
              Remark.Curve.class,
              kind(Remark.Curve.class, "curve")
                  .with("endAirForce", Numbers.FIGURE, Remark.Curve::endAirForce)
                  .with("totalEnergy", Numbers.FIGURE, Remark.Curve::totalEnergy)
                  .flag("estimate", Remark.Curve::estimate))
          .add(
              Remark.NoCurve.class,
              kind(Remark.NoCurve.class, "no-curve")
                  .list("needs", FigureFacts.NEED, Remark.NoCurve::needs))
          .add(
              Remark.MakesUp.class,
              kind(Remark.MakesUp.class, "makes-up")
                  .with("setting", SettingFacts.SETTING, Remark.MakesUp::setting)
                  .with("from", SettingFacts.READING, Remark.MakesUp::from)
                  .with("to", SettingFacts.READING, Remark.MakesUp::to)
                  .with("basis", Texts.TEXT, remark -> Words.word(remark.basis()))
                  .ifKnown("part", Numbers.FIGURE, remark -> FigureFacts.known(remark.part()))
                  .ifKnown("against", Words.of(Symptom.class), Remark.MakesUp::against))
          .add(
              Remark.Viscosity.class,
              kind(Remark.Viscosity.class, "viscosity")
                  .with("old", Texts.TEXT, remark -> remark.old().name())
                  .with("now", Texts.TEXT, remark -> remark.now().name())
                  .with("ratio", Numbers.FIGURE, Remark.Viscosity::ratio)
                  .with("temperature", AmountFacts.AMOUNT, Remark.Viscosity::temperature))
          .add(
              Remark.NoViscosity.class,
              kind(Remark.NoViscosity.class, "no-viscosity")
                  .with("why", Texts.TEXT, remark -> Words.word(remark.why())))
          .add(
              Remark.SpringRatio.class,
              kind(Remark.SpringRatio.class, "spring-ratio")
                  .with("setting", Ids.SETTING, Remark.SpringRatio::setting)
                  .with("ratio", Numbers.FIGURE, Remark.SpringRatio::ratio))
          .add(
              Remark.RunningIn.class,
              kind(Remark.RunningIn.class, "running-in")
                  .with("hours", AmountFacts.LIMITS, Remark.RunningIn::hours));

  private static final Facts<Step> STEP =
      Facts.of(Step.class)
          .with("id", Ids.STEP, Step::id)
          .with("kind", Words.of(StepKind.class), Step::kind)
          .with("place", Words.of(Place.class), Step::place)
          .with("minutes", Numbers.WHOLE, step -> step.kind().minutes())
          .ifKnown("setting", SettingFacts.SETTING, Step::setting)
          .ifKnown("leg", Words.of(Side.class), Step::leg)
          .with("enter", Words.of(Ask.Form.class), step -> step.ask().form())
          .ifKnown("target", TARGET, Step::target)
          .ifKnown("window", AmountFacts.LIMITS, step -> step.goal().wish())
          .ifKnown("total", AmountFacts.AMOUNT, step -> step.goal().total())
          .ifKnown("noted", SettingFacts.READING, step -> step.goal().noted())
          .list("torques", TORQUE, step -> step.goal().torques())
          .list("remarks", REMARK, step -> step.goal().remarks())
          .shortList("cautions", Words.of(Caution.class), Step::cautions)
          .shortList("tools", Words.of(Tool.class), step -> step.kind().tools())
          .with("doneWhen", Words.of(DoneWhen.class), step -> step.kind().doneWhen())
          .shortList(
              "after",
              Texts.TEXT,
              step -> step.after().stream().map(id -> id.text()).sorted().toList());

  private static final Facts<ReturnItem> BACK =
      Facts.of(ReturnItem.class)
          .with("action", Words.of(ReturnItem.Action.class), ReturnItem::action)
          .with("setting", SettingFacts.SETTING, item -> item.what().setting())
          .with("from", SettingFacts.READING, item -> item.what().now())
          .with("wanted", SettingFacts.READING, item -> item.what().wanted())
          .with("target", TARGET, item -> item.what().target())
          .list("remarks", REMARK, item -> item.what().remarks());

  static final Facts<Plan> PLAN =
      Facts.of(Plan.class)
          .with("scope", Words.of(Scope.class), plan -> plan.job().scope())
          .shortList("changed", Words.of(Renewed.class), RebuildAnswer::renewed)
          .with("baseline", Ids.ENTRY, plan -> plan.job().baseline())
          .with("sheetFrom", Texts.DAY, plan -> plan.job().sheetFrom())
          .with("minutes", Numbers.WHOLE, Plan::minutesLeft)
          .list("steps", STEP, Plan::steps)
          .list("back", BACK, plan -> plan.back().items())
          .list("shortfalls", SHORTFALL, plan -> plan.back().shortfalls())
          .list("remarks", REMARK, Plan::remarks);

  private RebuildAnswer() {}

  public static Reply of(Plan plan) {
    return Reply.of("rebuild", PLAN, plan);
  }

  private static List<Renewed> renewed(Plan plan) {
    return plan.job().renewed().stream().sorted().toList();
  }

  private static <T extends Remark> Facts<T> kind(Class<T> type, String word) {
    return Facts.of(type).word("kind", word);
  }
}
