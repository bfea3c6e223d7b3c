package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import rutbook.notebook.Reading;
import rutbook.reasoning.AfterRide;
import rutbook.reasoning.RiddenProposal;
import rutbook.reasoning.Verdict;
import rutbook.stats.MotoComparison;

/** What is asked and said after a moto with a suggestion in it, never more than it proves. */
public final class RiddenWords {
  private static final String AREA = "Reasoning";

  private final Phrases phrases;
  private final ReasoningWords reasoning;
  private final ReadingWords readings;
  private final ChangeWords changes;

  public RiddenWords(Phrases phrases) {
    this.phrases = phrases;
    this.reasoning = new ReasoningWords(phrases);
    this.readings = new ReadingWords(phrases);
    this.changes = new ChangeWords(phrases);
  }

  /** "Being tried: Fork compression, 12 → 14 out (2 softer)". */
  public String title(RiddenProposal ridden) {
    return phrases.say(
        AREA,
        ridden.isOn() ? "ridden.on" : "ridden.back",
        readings.setting(ridden.setting()),
        changes.change(ridden.setting(), ridden.proposal().from(), ridden.proposal().to()));
  }

  public String toRide() {
    return phrases.say(AREA, "ridden.to-ride");
  }

  /** What it is meant to help, before it is ridden. */
  public String meant(AfterRide.Asked asked) {
    return phrases.say(AREA, "ridden.meant", complaint(asked), asked.before().severity());
  }

  /** The question, or what is known already. */
  public String question(AfterRide.Asked asked) {
    int before = asked.before().severity();
    return asked
        .now()
        .map(now -> phrases.say(AREA, "ridden.known", complaint(asked), before, now.severity()))
        .orElseGet(() -> phrases.say(AREA, "ridden.question", complaint(asked), before));
  }

  private String complaint(AfterRide.Asked asked) {
    return reasoning.complaint(asked.complaint());
  }

  /** The key that says so severe against what it was before. */
  public String key(AfterRide.Asked asked, int severity) {
    int before = asked.before().severity();
    if (severity == 0) {
      return phrases.say(AREA, "ridden.gone");
    }
    String key =
        severity < before ? "ridden.better" : severity == before ? "ridden.same" : "ridden.worse";
    return phrases.say(AREA, key, severity);
  }

  /** The same for a screen reader, with what it is about. */
  public String keySaid(AfterRide.Asked asked, int severity) {
    return phrases.say(AREA, "ridden.key", complaint(asked), key(asked, severity));
  }

  /** What it proves so far, and what stands against that. */
  public List<String> verdict(AfterRide after) {
    List<String> said = new ArrayList<>();
    if (after.asked().isEmpty()) {
      said.add(phrases.say(AREA, "ridden.nothing-asked"));
    }
    if (!after.hasOpenQuestion() || after.verdict().outcome() != Verdict.Outcome.NOT_RIDDEN) {
      said.add(phrases.say(AREA, verdictKey(after)));
    }
    after.verdict().laps().ifPresent(laps -> laps(laps, said));
    if (!after.ridden().isAlone()) {
      said.add(phrases.say(AREA, "ridden.not-alone"));
    }
    return said;
  }

  /** What was set between two days has motos without it only after going back. */
  private static String verdictKey(AfterRide after) {
    boolean between = after.ridden().between().isPresent();
    return switch (after.verdict().outcome()) {
      case NOT_RIDDEN -> between ? "ridden.between" : "verdict.NOT_RIDDEN";
      case BETTER -> between ? "ridden.between.better" : "verdict.BETTER";
      default -> "verdict." + after.verdict().outcome().name();
    };
  }

  /** Laps before less laps with it: more than zero is faster with it. */
  private void laps(MotoComparison laps, List<String> said) {
    double faster = laps.difference().difference();
    boolean beyond = laps.difference().beyondNoise();
    String key =
        beyond
            ? faster > 0 ? "ridden.laps.faster" : "ridden.laps.slower"
            : faster > 0 ? "ridden.laps.inside.faster" : "ridden.laps.inside.slower";
    said.add(phrases.say(AREA, key, phrases.amounts().number(Math.abs(faster), 1)));
    if (!beyond && laps.motosToSettle().isPresent()) {
      said.add(phrases.say(AREA, "ridden.laps.settle", laps.motosToSettle().getAsInt()));
    }
  }

  /**
   * @param later whether the day of the session is over
   */
  public String step(RiddenProposal ridden, AfterRide.Step step, boolean later) {
    Reading to =
        step == AfterRide.Step.SET_AGAIN ? ridden.proposal().to() : ridden.proposal().from();
    String key = "ridden.step." + step.name();
    boolean other = later && step == AfterRide.Step.GO_BACK;
    return phrases.say(AREA, other ? key + ".later" : key, readings.reading(ridden.setting(), to));
  }
}
