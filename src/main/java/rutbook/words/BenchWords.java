package rutbook.words;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rutbook.notebook.Entered;
import rutbook.notebook.Job;
import rutbook.notebook.Outcome;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Setting;
import rutbook.notebook.StepDone;
import rutbook.rebuild.Place;
import rutbook.rebuild.Plan;
import rutbook.rebuild.ServiceLine;
import rutbook.rebuild.Step;
import rutbook.rebuild.Target;
import rutbook.rebuild.Tolerances;
import rutbook.rebuild.Tool;
import rutbook.units.Amount;
import rutbook.units.Duration;

/** What is said at the bench: where a job stands, why a step is done, what an entry shows. */
public final class BenchWords {
  private static final String AREA = "Bench";

  private final Phrases phrases;
  private final ReadingWords readings;

  public BenchWords(Phrases phrases) {
    this.phrases = phrases;
    this.readings = new ReadingWords(phrases);
  }

  /** A plain phrase of this area. */
  public String say(String key, Object... facts) {
    return phrases.say(AREA, key, facts);
  }

  public String job(Job job) {
    return scope(job.scope());
  }

  public String scope(Scope scope) {
    return phrases.say(AREA, "Scope." + scope.name());
  }

  /** What went in new: "new: oil, seals". */
  public String renewed(Job job) {
    Set<Renewed> renewed = new TreeSet<>(job.renewed());
    return renewed.isEmpty()
        ? phrases.say(AREA, "renewed.none")
        : phrases.say(AREA, "renewed", list(renewed.stream().map(phrases::name).toList()));
  }

  private String list(Collection<String> parts) {
    return parts.stream().reduce((a, b) -> phrases.say(AREA, "list", a, b)).orElse("");
  }

  /** Which step of how many, and how long it still takes. */
  public String progress(Plan plan, Step step) {
    int place = plan.steps().indexOf(step) + 1;
    return plan.minutesLeft() == 0
        ? phrases.say(AREA, "progress", job(plan.job()), place, plan.steps().size())
        : phrases.say(
            AREA,
            "progress.left",
            job(plan.job()),
            place,
            plan.steps().size(),
            time(plan.minutesLeft()));
  }

  /** Minutes as a rider says them: an hour and a half is nearer the truth than 87 minutes. */
  public String time(int minutes) {
    return minutes < 60
        ? phrases.say(AREA, "minutes", minutes)
        : phrases.say(AREA, "hours", Math.round(minutes / 30.0) / 2.0);
  }

  public String through(Plan plan) {
    return phrases.say(AREA, "through", job(plan.job()));
  }

  public String place(Place place) {
    return phrases.say(AREA, "Place." + place.name());
  }

  public String state(Plan.State state) {
    return phrases.say(AREA, "State." + state.name());
  }

  public String outcome(Outcome outcome) {
    return phrases.name(outcome);
  }

  /** Tools in the order in which they are needed. */
  public String tools(Collection<Tool> tools) {
    return list(tools.stream().map(tool -> phrases.say(AREA, "Tool." + tool.name())).toList());
  }

  /** Why a step is done, where that is not plain, and what ends it. */
  public String why(Step step) {
    String done = phrases.say(AREA, "Done." + step.kind().doneWhen().name());
    return phrases
        .sayIfKnown(AREA, "Why." + step.kind().name())
        .map(why -> why + " " + done)
        .orElse(done);
  }

  /** The number that the step is about, large enough for the bench; empty where there is none. */
  public Optional<String> headline(Step step) {
    if (step.goal().total().isPresent()) {
      return step.goal().total().map(phrases.amounts()::amount);
    }
    return step.target().isPresent()
        ? step.target().map(target -> target(step, target))
        : onlyTorque(step).map(phrases.amounts()::amount);
  }

  /** The same in the other system of units, where that reads differently. */
  public Optional<String> otherSystem(Step step) {
    if (step.goal().total().isPresent()) {
      return Optional.empty();
    }
    return step.target().isPresent()
        ? step.target()
            .map(target -> readings.within(target.limits()).other(target.reading()))
            .filter(said -> !said.isEmpty())
        : onlyTorque(step).flatMap(phrases.amounts()::other);
  }

  /** What is to be set, in no unit beyond its limits. */
  private String target(Step step, Target target) {
    return step.setting()
        .map(setting -> readings.within(target.limits()).reading(setting, target.reading()))
        .orElseGet(() -> reading(step, target.reading()));
  }

  private static Optional<Amount> onlyTorque(Step step) {
    return step.goal().torques().size() == 1
        ? Optional.of(step.goal().torques().get(0).amount())
        : Optional.empty();
  }

  /** How far the legs may differ, at a step where both are put right and meant to be alike. */
  public Optional<String> equality(Step step) {
    return step.setting()
        .filter(setting -> step.ask().bothLegs() && step.kind().places())
        .filter(setting -> step.target().map(it -> !it.reading().legsDiffer()).orElse(true))
        .map(setting -> Tolerances.legs(setting.dimension(), setting.scale().step()))
        .map(amount -> phrases.say(AREA, "equal", amount));
  }

  /** Where an adjuster goes once it is counted to closed. */
  public Optional<String> thenOut(Step step) {
    return step.target()
        .filter(target -> step.goal().total().isPresent())
        .map(target -> phrases.say(AREA, "then", reading(step, target.reading())));
  }

  public String reading(Step step, Reading reading) {
    return step.setting()
        .map(setting -> readings.reading(setting, reading))
        .orElseGet(
            () ->
                reading.amounts().stream()
                    .map(phrases.amounts()::amount)
                    .collect(Collectors.joining(" ")));
  }

  /** What was entered at a step and when. */
  public String entered(Step step, StepDone done, ZoneId zone) {
    String time =
        DateTimeFormatter.ofPattern("d MMM HH:mm", phrases.locale()).format(done.at().atZone(zone));
    String what = entered(step, done.entered());
    return done.doneOn()
        .map(day -> phrases.say(AREA, "entered.paper", what, day, time))
        .orElseGet(() -> phrases.say(AREA, "entered", what, time));
  }

  private String entered(Step step, Entered entered) {
    if (entered instanceof Entered.Skipped skipped) {
      return phrases.say(AREA, "entered.skipped", skipped.why());
    }
    if (entered instanceof Entered.Counted counted) {
      return reading(step, counted.reading());
    }
    if (entered instanceof Entered.Ticked ticked && !ticked.note().isBlank()) {
      return phrases.say(AREA, "entered.noted", ticked.note());
    }
    return entered instanceof Entered.Measured measured
        ? reading(step, measured.reading())
        : phrases.say(AREA, "entered.ticked");
  }

  public String due(ServiceLine line) {
    return phrases.name(line.due());
  }

  /** Hours since it was done, of how many. */
  public String hours(ServiceLine line) {
    return phrases.say(
        AREA,
        "service.hours",
        phrases.amounts().number(line.hoursSince(), 1),
        phrases.amounts().number(line.item().interval().doubleIn(Duration.HOUR), 1));
  }

  public Optional<String> forecast(ServiceLine line) {
    return line.forecast().map(day -> phrases.say(AREA, "service.forecast", day));
  }

  /** What the rider's own ratings say of an oil, with how sure that is. */
  public Optional<String> fade(ServiceLine line) {
    return line.fade()
        .map(
            fade ->
                phrases.say(
                    AREA,
                    fade.outsideChance() ? "fade.outside" : "fade.inside",
                    phrases.sentence(phrases.name(fade.end())),
                    fade.symptom(),
                    rise(fade.perTenHours()),
                    rise(fade.perTenHours() - fade.half()),
                    rise(fade.perTenHours() + fade.half()),
                    fade.motos(),
                    fade.sessions(),
                    fade.symptoms()));
  }

  private String rise(double rating) {
    String size = phrases.amounts().number(Math.abs(rating), 1);
    return rating <= -0.05 ? phrases.say("Amounts", "minus", size) : size;
  }

  /** An amount in the rider's unit. */
  public String amount(Amount amount) {
    return phrases.amounts().amount(amount);
  }

  public String setting(Setting setting) {
    return phrases.sentence(readings.setting(setting));
  }
}
