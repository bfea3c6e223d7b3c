package rutbook.json;

import rutbook.notebook.End;
import rutbook.notebook.Gate;
import rutbook.notebook.Symptom;
import rutbook.notebook.Work;
import rutbook.reasoning.Bother;
import rutbook.reasoning.Complaint;
import rutbook.reasoning.GateCard;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.Rule;
import rutbook.reasoning.RuleTrust;
import rutbook.reasoning.SectionGroup;
import rutbook.reasoning.Suggestion;
import rutbook.reasoning.Telling;

/** What {@code next} answers: what comes first, what bothers, and the changes to try. */
public final class NextAnswer {
  static final Facts<Complaint> COMPLAINT =
      Facts.line(Complaint.class)
          .with("end", Words.of(End.class), Complaint::end)
          .with("symptom", Words.of(Symptom.class), Complaint::symptom)
          .with("group", Words.of(SectionGroup.class), Complaint::group);

  private static final Facts<GateCard> GATE =
      Facts.line(GateCard.class)
          .with("gate", Words.of(Gate.class), GateCard::gate)
          .flag("blocks", GateCard::blocks)
          .ifKnown("because", Ids.ENTRY, GateCard::because);

  private static final Facts<Bother> BOTHER =
      Facts.of(Bother.class)
          .with("complaint", COMPLAINT, Bother::complaint)
          .with("expected", Numbers.FIGURE, Bother::expected)
          .with("low", Numbers.FIGURE, Bother::low)
          .with("high", Numbers.FIGURE, Bother::high)
          .ifKnown("rated", Numbers.WHOLE, bother -> RideFacts.whole(bother.rated()))
          .with("left", Numbers.FIGURE, Bother::left);

  private static final Facts<Rule> RULE =
      Facts.line(Rule.class)
          .with("id", Texts.TEXT, Rule::id)
          .with("size", Numbers.FIGURE, Rule::size)
          .flag("disputed", Rule::disputed)
          .with("reason", Texts.TEXT, Rule::reason);

  private static final Facts<Suggestion.Shift> SHIFT =
      Facts.of(Suggestion.Shift.class)
          .with("complaint", COMPLAINT, Suggestion.Shift::complaint)
          .with("mean", Numbers.FIGURE, Suggestion.Shift::mean)
          .with("low", Numbers.FIGURE, Suggestion.Shift::low)
          .with("high", Numbers.FIGURE, Suggestion.Shift::high)
          .ifKnown("rule", RULE, Suggestion.Shift::rule)
          .with("byRule", Numbers.FIGURE, Suggestion.Shift::byRule)
          .with("clean", Numbers.WHOLE, shift -> (int) shift.cleanTrials())
          .with("mixed", Numbers.WHOLE, shift -> shift.trials().size() - (int) shift.cleanTrials());

  private static final Facts<Telling.Explanation> REMEDY =
      Facts.line(Telling.Explanation.class)
          .with("setting", SettingFacts.SETTING, Telling.Explanation::setting)
          .with("from", SettingFacts.READING, Telling.Explanation::from)
          .with("to", SettingFacts.READING, Telling.Explanation::to)
          .with("chance", Numbers.FIGURE, Telling.Explanation::chance);

  private static final Facts<Telling> TELLING =
      Facts.of(Telling.class)
          .with("complaint", COMPLAINT, Telling::complaint)
          .with("under", REMEDY, Telling::under)
          .with("over", REMEDY, Telling::over)
          .with("limit", Numbers.FIGURE, Telling::limit)
          .with("mistaken", Numbers.FIGURE, Telling::mistaken);

  private static final Facts<Suggestion> SUGGESTION =
      Facts.of(Suggestion.class)
          .with("setting", SettingFacts.SETTING, Suggestion::setting)
          .with("from", SettingFacts.READING, Suggestion::from)
          .with("to", SettingFacts.READING, Suggestion::to)
          .with("doses", Numbers.WHOLE, Suggestion::doses)
          .with("gain", Numbers.FIGURE, Suggestion::gain)
          .with("chance", Numbers.FIGURE, Suggestion::chance)
          .with("work", Words.of(Work.class), each -> each.setting().work())
          .with("cost", Numbers.FIGURE, Suggestion::cost)
          .flag("nearStop", Suggestion::nearStop)
          .ifKnown("room", AmountFacts.STEP, Suggestion::room)
          .ifKnown("tells", TELLING, Suggestion::tells)
          .list("shifts", SHIFT, Suggestion::shifts);

  private static final Facts<RuleTrust> RULES =
      Facts.line(RuleTrust.class)
          .with("holds", Numbers.FIGURE, RuleTrust::holds)
          .with("nothing", Numbers.FIGURE, RuleTrust::nothing)
          .with("reversed", Numbers.FIGURE, RuleTrust::reversed);

  private static final Facts<NextChange> NEXT =
      Facts.of(NextChange.class)
          .with("kind", Words.of(NextChange.Kind.class), NextChange::kind)
          .list("gates", GATE, NextChange::gates)
          .list("now", BOTHER, NextChange::now)
          .list("suggestions", SUGGESTION, NextChange::suggestions)
          .list("ask", COMPLAINT, NextChange::ask)
          .with("rules", RULES, NextChange::rules);

  private NextAnswer() {}

  public static Reply of(NextChange next) {
    return Reply.of("next", NEXT, next);
  }
}
