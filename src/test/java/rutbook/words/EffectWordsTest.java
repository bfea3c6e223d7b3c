package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rutbook.compare.Comparison;
import rutbook.compare.Subject;
import rutbook.json.RulesJson;
import rutbook.notebook.Bench;
import rutbook.notebook.Notebook;
import rutbook.notebook.Placed;
import rutbook.notebook.SettingId;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.reasoning.MoveEffects;
import rutbook.samples.Samples;
import rutbook.units.Display;

/** What a difference does, in two sentences that never mix. */
class EffectWordsTest {
  private final EffectWords words = new EffectWords(Phrases.english(Display.METRIC));

  private static Timeline timeline(Notebook notebook) {
    return Timeline.of(notebook, notebook.bikes().get(0).id());
  }

  private Map<SettingId, List<String>> lines(Notebook notebook, Comparison sides) {
    return words.lines(MoveEffects.of(notebook, timeline(notebook), RulesJson.ofTheTrade()), sides);
  }

  @Test
  void theTradeAndTheRidersOwnMotosEachHaveTheirOwnSentence() {
    Notebook season = Samples.season();
    Timeline timeline = timeline(season);
    List<Track> tracks = season.shelf().tracks();
    Comparison sides =
        Comparison.of(
            Subject.best(timeline, tracks.get(0)).orElseThrow(),
            Subject.best(timeline, tracks.get(1)).orElseThrow());

    Map<SettingId, List<String>> lines = lines(season, sides);

    assertThat(lines).hasSize(sides.settings().differing().size());
    assertThat(lines.get(new SettingId("fork-compression")))
        .containsExactly(
            "The trade expects, in points of 5: front dives 1 less, front harsh (hits and deflects)"
                + " 1.2 more.",
            "Your motos, in clean comparisons: front dives 3 better, 2 same, 3 worse; front harsh 2"
                + " better, 3 same, 4 worse.");
    assertThat(lines.values())
        .allSatisfy(
            each -> {
              assertThat(each.get(0)).startsWith("The trade").doesNotContain("Your");
              assertThat(each.get(1)).startsWith("Your motos").doesNotContain("trade");
            });
  }

  @Test
  void whereNothingIsKnownThatIsSaid() {
    Notebook bench = Bench.notebook();
    Subject now = Subject.now(timeline(bench));
    Subject other =
        new Subject(
            now.choice(),
            now.day(),
            now.sheet(),
            Bench.setup()
                .with(Placed.set(Bench.TYRE_REAR, rutbook.notebook.Reading.of(bar("0.8")))),
            now.sag(),
            now.conditions(),
            List.of(),
            now.trust());
    assertThat(lines(bench, Comparison.of(now, other)).get(Bench.TYRE_REAR))
        .containsExactly(
            "The trade has no rule for this setting.",
            "Your motos say nothing of this setting yet.");
  }

  private static rutbook.units.Amount bar(String number) {
    return rutbook.units.Amount.of(number, rutbook.units.Pressure.BAR);
  }

  @Test
  void aSettingThatOnlyOneSideHasIsNotExplained() {
    Notebook bench = Bench.notebook();
    Subject now = Subject.now(timeline(bench));
    Subject fewer =
        new Subject(
            now.choice(),
            now.day(),
            now.sheet(),
            new rutbook.notebook.Setup(
                now.setup().placed().stream()
                    .filter(each -> !each.setting().equals(Bench.TUBE))
                    .toList()),
            now.sag(),
            now.conditions(),
            List.of(),
            now.trust());
    assertThat(lines(bench, Comparison.of(now, fewer)).get(Bench.TUBE)).isEmpty();
  }
}
