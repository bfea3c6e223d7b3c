package rutbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rutbook.notebook.Work;
import rutbook.reasoning.Bother;
import rutbook.reasoning.Complaint;
import rutbook.reasoning.GateCard;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.Rule;
import rutbook.reasoning.Suggestion;
import rutbook.reasoning.Telling;
import rutbook.units.Amount;

/**
 * What the reasoning says: never that a change will help, and rules and the rider's own motos never
 * in one sentence.
 */
public final class ReasoningWords {
  private static final String AREA = "Reasoning";

  private final Phrases phrases;
  private final ReadingWords readings;
  private final ChangeWords changes;

  public ReasoningWords(Phrases phrases) {
    this.phrases = phrases;
    this.readings = new ReadingWords(phrases);
    this.changes = new ChangeWords(phrases);
  }

  public String kind(NextChange.Kind kind) {
    return phrases.say(AREA, "kind." + kind.name());
  }

  /** "Front harsh, square edges and rocks". */
  public String complaint(Complaint complaint) {
    return phrases.sentence(within(complaint));
  }

  private String within(Complaint complaint) {
    return phrases.say(
        AREA,
        "complaint",
        complaint.end(),
        complaint.symptom(),
        phrases.say(AREA, "group." + complaint.group().name()));
  }

  public String nowHeading(boolean anything) {
    return anything ? phrases.say(AREA, "now") : phrases.say(AREA, "nothing-now");
  }

  public String bother(Bother bother) {
    String said =
        !bother.isFelt()
            ? phrases.say(AREA, "bother.absent", complaint(bother.complaint()))
            : phrases.say(
                AREA,
                "bother",
                complaint(bother.complaint()),
                points(Math.min(5, bother.expected())));
    return bother.rated().isPresent()
        ? phrases.say(AREA, "bother.rated", said, bother.rated().getAsInt())
        : said;
  }

  public String gatesHeading() {
    return phrases.say(AREA, "first");
  }

  public String gate(GateCard card) {
    return phrases.say(AREA, "gate." + card.gate().name());
  }

  public String ask(Complaint complaint) {
    return phrases.say(AREA, "ask", complaint(complaint));
  }

  public String finerHeading() {
    return phrases.say(AREA, "finer");
  }

  public String howToTest() {
    return phrases.say(AREA, "test");
  }

  /** "Fork compression, each leg: 12 → 14 out (2 softer)". */
  public String suggestion(Suggestion suggestion) {
    return phrases.say(
        AREA,
        "suggestion",
        phrases.sentence(readings.setting(suggestion.setting())),
        changes.change(suggestion.setting(), suggestion.from(), suggestion.to()));
  }

  /** How sure it is, in words with the number behind it. */
  public String chance(Suggestion suggestion) {
    int percent = (int) Math.round(100 * suggestion.chance());
    String key =
        percent >= 90
            ? "chance.very"
            : percent >= 75 ? "chance.likely" : percent >= 60 ? "chance.rather" : "chance.even";
    return phrases.say(AREA, key, percent);
  }

  /** What is expected, what it may cost, what speaks for it, and the room that is left. */
  public List<String> reasons(Suggestion suggestion) {
    List<String> said = new ArrayList<>();
    said.add(phrases.say(AREA, "gain", points(suggestion.gain())));
    for (Suggestion.Shift shift : suggestion.shifts()) {
      said.add(shift(shift));
    }
    for (Suggestion.Shift shift : suggestion.shifts()) {
      rule(shift).ifPresent(said::add);
    }
    said.addAll(own(suggestion));
    suggestion.room().ifPresent(room -> said.add(room(room, suggestion.nearStop())));
    said.add(work(suggestion.setting().work()));
    return said;
  }

  /** That rules have held less well on this bike than on most; nothing where they have not. */
  public Optional<String> trust(NextChange next) {
    int percent = (int) Math.round(100 * next.rules().reversed());
    return next.rules().isLess() && !next.suggestions().isEmpty()
        ? Optional.of(phrases.say(AREA, "trust", percent))
        : Optional.empty();
  }

  /** Which of two explanations a ride with the change would tell, and how to read it. */
  public Optional<String> tells(Suggestion suggestion) {
    return suggestion
        .tells()
        .map(
            each ->
                phrases.say(
                    AREA,
                    "tells",
                    explanation(each.under()),
                    explanation(each.over()),
                    within(each.complaint()),
                    points(each.limit())));
  }

  /** "fork compression, each leg, 2 softer (38 %)". */
  private String explanation(Telling.Explanation each) {
    return phrases.say(
        AREA,
        "explanation",
        readings.setting(each.setting()),
        changes.difference(each.setting(), each.from(), each.to()),
        (int) Math.round(100 * each.chance()));
  }

  /** Where the work is done: "at the track, in a minute". */
  public String work(Work work) {
    return phrases.say(AREA, "work." + work.name());
  }

  /** "Front harsh, square edges and rocks: about 1.2 less (0.4 less to 2.0 less)". */
  public String shift(Suggestion.Shift shift) {
    boolean better = shift.mean() < 0;
    String complaint = better ? complaint(shift.complaint()) : within(shift.complaint());
    return phrases.say(
        AREA,
        better ? "shift.better" : "shift.worse",
        complaint,
        points(Math.abs(shift.mean())),
        end(better ? shift.high() : shift.low(), better),
        end(better ? shift.low() : shift.high(), better));
  }

  /** An end of the interval; said with its sign when it lies on the other side. */
  private String end(double value, boolean better) {
    double along = better ? -value : value;
    return (along < -0.05 ? "−" : "") + points(Math.abs(value));
  }

  private Optional<String> rule(Suggestion.Shift shift) {
    return shift
        .rule()
        .map(
            rule ->
                phrases.say(
                    AREA,
                    rule.disputed() ? "rule.disputed" : "rule",
                    reason(rule),
                    within(shift.complaint())));
  }

  /** In this language where its bundle has the rule; as the rule says it otherwise. */
  private String reason(Rule rule) {
    return phrases.sayIfKnown("Rules", rule.id()).orElse(rule.reason());
  }

  private List<String> own(Suggestion suggestion) {
    List<String> said = new ArrayList<>();
    for (Suggestion.Shift shift : suggestion.shifts()) {
      int clean = (int) shift.cleanTrials();
      int mixed = shift.trials().size() - clean;
      if (!shift.trials().isEmpty()) {
        said.add(phrases.say(AREA, "own", within(shift.complaint()), clean, mixed));
      }
    }
    return said.isEmpty() ? List.of(phrases.say(AREA, "own.none")) : said;
  }

  private String room(Amount room, boolean near) {
    if (room.value().signum() <= 0) {
      return phrases.say(AREA, "room.none");
    }
    return phrases.say(AREA, near ? "room.near" : "room", room);
  }

  private String points(double points) {
    return phrases.amounts().number(points, 1);
  }
}
