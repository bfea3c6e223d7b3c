package rutbook.report;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import rutbook.notebook.Side;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Plan;
import rutbook.rebuild.ReturnItem;
import rutbook.rebuild.Step;
import rutbook.words.BenchWords;
import rutbook.words.PlanWords;
import rutbook.words.RemarkWords;

/** The plan of a rebuild for the day when no screen is near, with empty boxes to write in. */
final class WorkSheet {
  private final CardOf of;
  private final PlanWords planning;
  private final BenchWords bench;

  WorkSheet(CardOf of) {
    this.of = of;
    this.planning = new PlanWords(of.phrases());
    this.bench = new BenchWords(of.phrases());
  }

  /**
   * @param zone in which it is said when a step was done
   */
  Card card(Plan plan, ZoneId zone) {
    List<Card.Block> blocks = new ArrayList<>();
    List<String> ready = new ArrayList<>(List.of(tools(plan)));
    planning.oil(plan).ifPresent(ready::add);
    blocks.add(new Card.Lines(of.words().say("work.tools"), ready));
    blocks.addAll(work(plan, zone));
    List<String> back = plan.back().items().stream().map(this::back).toList();
    if (!back.isEmpty()) {
      blocks.add(new Card.Lines(of.words().say("work.back"), back));
    }
    if (!plan.remarks().isEmpty()) {
      RemarkWords remarks = new RemarkWords(of.phrases());
      blocks.add(
          new Card.Lines(
              of.words().say("work.remarks"),
              plan.remarks().stream().map(it -> remarks.remark(plan.sheet(), it)).toList()));
    }
    return new Card(
        of.words().say("work", of.bike(), bench.job(plan.job())),
        under(plan),
        blocks,
        of.cautions(plan.sheet()));
  }

  private List<String> under(Plan plan) {
    String time = of.words().say("work.time", plan.steps().size(), plan.minutesLeft());
    List<String> under = new ArrayList<>();
    under.add(of.phrases().sentence(bench.renewed(plan.job())) + " · " + time);
    of.timeline().entries(rutbook.notebook.Entry.Baseline.class).stream()
        .filter(baseline -> baseline.id().equals(plan.job().baseline()))
        .findFirst()
        .ifPresent(baseline -> under.add(of.words().say("work.baseline", baseline.day())));
    return under;
  }

  private String tools(Plan plan) {
    return of.phrases().sentence(bench.tools(plan.tools()));
  }

  private String back(ReturnItem item) {
    return planning.back(item);
  }

  /** The steps in working order, under the place where they are done. */
  private List<Card.Block> work(Plan plan, ZoneId zone) {
    List<Card.Block> blocks = new ArrayList<>();
    List<Card.Step> here = new ArrayList<>();
    for (int i = 0; i < plan.steps().size(); i++) {
      Step step = plan.steps().get(i);
      here.add(step(i + 1, step, done(plan, step, zone)));
      boolean last = i + 1 == plan.steps().size();
      if (last || plan.steps().get(i + 1).place() != step.place()) {
        blocks.add(new Card.Work(bench.place(step.place()), here));
        here = new ArrayList<>();
      }
    }
    return blocks;
  }

  /** What was entered at a step and when; empty while it is to be done, or to be done again. */
  private String done(Plan plan, Step step, ZoneId zone) {
    return plan.state(step) == Plan.State.AGAIN
        ? ""
        : plan.done(step.id()).map(done -> bench.entered(step, done, zone)).orElse("");
  }

  private Card.Step step(int number, Step step, String done) {
    return new Card.Step(
        number,
        planning.title(step),
        planning.values(step),
        step.cautions().stream().map(planning::caution).toList(),
        boxes(step.ask()),
        done);
  }

  /** A box to tick, one for words beside it, or one for each leg with the unit it is written in. */
  private List<String> boxes(Ask ask) {
    if (ask.unit().isEmpty()) {
      return ask.words() ? List.of(" ", "") : List.of("");
    }
    String unit = of.phrases().amounts().unit(ask.unit().get().dimension());
    if (!ask.bothLegs()) {
      return List.of(unit, "");
    }
    return List.of(side(Side.LEFT, unit), side(Side.RIGHT, unit), "");
  }

  private String side(Side side, String unit) {
    return of.words().say("work.unit", side, unit);
  }
}
