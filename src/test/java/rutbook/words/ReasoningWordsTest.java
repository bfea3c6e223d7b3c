package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rutbook.json.RulesJson;
import rutbook.notebook.Bench;
import rutbook.notebook.BikeId;
import rutbook.notebook.End;
import rutbook.notebook.EntryId;
import rutbook.notebook.Feel;
import rutbook.notebook.Gate;
import rutbook.notebook.MotoId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Section;
import rutbook.notebook.Symptom;
import rutbook.reasoning.Bother;
import rutbook.reasoning.Complaint;
import rutbook.reasoning.GateCard;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.Rule;
import rutbook.reasoning.RuleBook;
import rutbook.reasoning.RuleTrust;
import rutbook.reasoning.Suggestion;
import rutbook.reasoning.Telling;
import rutbook.reasoning.Trial;
import rutbook.samples.Samples;
import rutbook.units.Amount;
import rutbook.units.Display;

/** What the reasoning says, word for word, and that no sentence of it promises. */
class ReasoningWordsTest {
  private static final RuleBook RULES = RulesJson.ofTheTrade();
  private static final Complaint HARSH =
      Complaint.of(Feel.of(End.FRONT, Section.SQUARE_EDGES, Symptom.HARSH, 0));
  private static final Complaint DIVES =
      Complaint.of(Feel.of(End.FRONT, Section.CORNER_ENTRY, Symptom.DIVES, 0));

  private final ReasoningWords words = new ReasoningWords(Phrases.english(Display.METRIC));

  private static Suggestion.Shift shift(
      Complaint complaint, double mean, double low, double high, Trial... trials) {
    String id = complaint.equals(HARSH) ? "harsh-deflects-compression" : "dives-compression";
    Optional<Rule> rule = RULES.rules().stream().filter(each -> each.id().equals(id)).findFirst();
    return new Suggestion.Shift(complaint, mean, low, high, rule, 0, List.of(trials));
  }

  private static Suggestion softer(
      double chance, boolean nearStop, Amount room, Suggestion.Shift... shifts) {
    return new Suggestion(
        Words.COMPRESSION,
        Reading.bothLegs(Bench.clicks(12)),
        Reading.bothLegs(Bench.clicks(14)),
        -2,
        1.24,
        chance,
        0,
        List.of(shifts),
        nearStop,
        Optional.of(room),
        Optional.empty());
  }

  private static Suggestion softer(double chance) {
    return softer(chance, false, Bench.clicks(6));
  }

  private static Trial trial(boolean clean) {
    return new Trial(
        new EntryId("s"),
        LocalDate.of(2026, 3, 1),
        new MotoId("a"),
        new MotoId("b"),
        -2,
        4,
        3,
        clean);
  }

  @Test
  void howSureItIsIsSaidInWordsWithTheNumberBehindIt() {
    assertThat(words.chance(softer(0.904))).isEqualTo("very likely better overall, 90 %");
    assertThat(words.chance(softer(0.896))).isEqualTo("very likely better overall, 90 %");
    assertThat(words.chance(softer(0.894))).isEqualTo("likely better overall, 89 %");
    assertThat(words.chance(softer(0.75))).isEqualTo("likely better overall, 75 %");
    assertThat(words.chance(softer(0.74))).isEqualTo("rather better than not, 74 %");
    assertThat(words.chance(softer(0.6))).isEqualTo("rather better than not, 60 %");
    assertThat(words.chance(softer(0.59))).isEqualTo("could go either way, 59 %");
  }

  @Test
  void aSuggestionNamesTheSettingTheChangeAndItsSense() {
    assertThat(words.suggestion(softer(0.8)))
        .startsWith("Fork compression")
        .contains("12")
        .contains("14")
        .contains("2 softer");
  }

  @Test
  void whatItHelpsAndCostsIsSaidWithTheEndsOfItsInterval() {
    assertThat(words.shift(shift(HARSH, -1.2, -2.0, -0.4)))
        .isEqualTo("Front harsh, square edges and rocks: about 1.2 less (0.4 to 2)");
    assertThat(words.shift(shift(HARSH, -0.5, -1.4, 0.3)))
        .as("an end on the other side has its sign")
        .isEqualTo("Front harsh, square edges and rocks: about 0.5 less (−0.3 to 1.4)");
    assertThat(words.shift(shift(DIVES, 0.7, 0.0, 1.5)))
        .isEqualTo("may cost front dives, braking and corner entry: about 0.7 more (0 to 1.5)");
  }

  @Test
  void reasonsKeepTheTradeAndTheOwnMotosInSentencesOfTheirOwn() {
    Suggestion suggestion =
        softer(
            0.8,
            true,
            Bench.clicks(2),
            shift(HARSH, -1.2, -2.0, -0.4, trial(true), trial(true), trial(false)),
            shift(DIVES, 0.7, 0.0, 1.5));
    assertThat(words.reasons(suggestion))
        .containsExactly(
            "expected: 1.2 points of severity less in all",
            "Front harsh, square edges and rocks: about 1.2 less (0.4 to 2)",
            "may cost front dives, braking and corner entry: about 0.7 more (0 to 1.5)",
            "the trade, on front harsh, square edges and rocks: compression too closed to follow"
                + " small bumps",
            "the trade, on front dives, braking and corner entry: damping slows the dive",
            "your own motos, on front harsh, square edges and rocks: 2 clean comparisons, one"
                + " mixed",
            "room left to the limit: 2 clicks, near its stop",
            "at the track, in a minute");
  }

  @Test
  void whereOwnMotosOrRoomAreMissingThatIsSaid() {
    assertThat(words.reasons(softer(0.8, true, Bench.clicks(0))))
        .contains("your own motos do not speak of this change yet")
        .contains("this is the limit: the adjuster has no room left");
  }

  @Test
  void whatBothersIsSaidAsExpectedAndAsWritten() {
    assertThat(words.bother(new Bother(HARSH, 2.44, 1, 4, OptionalInt.of(3), 0)))
        .isEqualTo("Front harsh, square edges and rocks: about 2.4 of 5 (last written: 3)");
    assertThat(words.bother(new Bother(HARSH, 6.2, 5, 7, OptionalInt.empty(), 0)))
        .isEqualTo("Front harsh, square edges and rocks: about 5 of 5");
    assertThat(words.bother(new Bother(HARSH, 0.4, 0, 1, OptionalInt.empty(), 0)))
        .isEqualTo("Front harsh, square edges and rocks: not felt");
  }

  @Test
  void howARideTellsTwoRemediesApartIsSaidInOneSentence() {
    Reading now = Reading.bothLegs(Bench.clicks(12));
    Telling which =
        new Telling(
            HARSH,
            new Telling.Explanation(
                Words.COMPRESSION, now, Reading.bothLegs(Bench.clicks(14)), 0.374),
            new Telling.Explanation(
                Words.COMPRESSION, now, Reading.bothLegs(Bench.clicks(10)), 0.3),
            2.94,
            0.1);
    Suggestion told = softer(0.7);
    assertThat(words.tells(told)).isEmpty();
    assertThat(words.tells(telling(told, which)))
        .contains(
            "A ride with it tells two remedies apart: front harsh, square edges and rocks, under"
                + " 2.9 of 5 speaks for Fork compression, 2 softer (37 %), over it for Fork"
                + " compression, 2 firmer (30 %).");
  }

  private static Suggestion telling(Suggestion each, Telling which) {
    return new Suggestion(
        each.setting(),
        each.from(),
        each.to(),
        each.doses(),
        each.gain(),
        each.chance(),
        each.cost(),
        each.shifts(),
        each.nearStop(),
        each.room(),
        Optional.of(which));
  }

  @Test
  void thatRulesHoldLessHereIsSaidOnlyWhereItIsSoAndSomethingIsSuggested() {
    assertThat(words.trust(suggesting(new RuleTrust(0.7, 0.12, 0.18), softer(0.7))))
        .contains(
            "Rules hold less well on this bike than on most: about 18 % seem to be the other way"
                + " round. The chances count that.");
    assertThat(words.trust(suggesting(new RuleTrust(0.76, 0.12, 0.12), softer(0.7)))).isEmpty();
    assertThat(words.trust(suggesting(new RuleTrust(0.7, 0.12, 0.18)))).isEmpty();
  }

  private static NextChange suggesting(RuleTrust rules, Suggestion... all) {
    return new NextChange(
        NextChange.Kind.CHANGE, List.of(), List.of(), List.of(all), List.of(), rules);
  }

  @Test
  void noSentencePromises() {
    List<String> all = new ArrayList<>();
    for (NextChange.Kind kind : NextChange.Kind.values()) {
      all.add(words.kind(kind));
    }
    for (Gate gate : Gate.values()) {
      all.add(words.gate(new GateCard(gate, Optional.empty())));
    }
    all.add(words.ask(HARSH));
    all.add(words.howToTest());
    all.add(words.finerHeading());
    Notebook season = Samples.season();
    BikeId bike = season.bikes().get(0).id();
    for (Suggestion each : NextChange.of(season, bike, RULES).suggestions()) {
      all.add(words.suggestion(each));
      all.add(words.chance(each));
      all.addAll(words.reasons(each));
    }
    assertThat(all).hasSizeGreaterThan(20);
    assertThat(all)
        .allSatisfy(
            said ->
                assertThat(said.toLowerCase(java.util.Locale.ROOT))
                    .isNotBlank()
                    .doesNotContain("{")
                    .doesNotContainPattern(
                        "\\b(will|guarantee[sd]?|certainly|definitely|fixes)\\b"));
    assertThat(all)
        .noneMatch(said -> said.contains("the trade") && said.contains("your own motos"));
  }
}
