package rutbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.drawing.Chart;
import rutbook.drawing.ChartName;
import rutbook.figures.ForkFigures;
import rutbook.figures.OilStanding;
import rutbook.figures.Riding;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.samples.Samples;
import rutbook.units.Display;

class ChartWordsTest {
  private final Notebook season = Samples.season();
  private final Timeline timeline = Timeline.of(season, season.bikes().get(0).id());
  private final Riding riding = Riding.of(season.shelf(), timeline);
  private final ForkFigures fork =
      ForkFigures.of(timeline.bike().latestSheet(), timeline.now(), riding);

  private Chart chart(Display display) {
    return new ChartWords(Phrases.english(display)).fork(fork, riding.frontSag()).orElseThrow();
  }

  @Test
  void theForkIsDrawnInTheRidersUnitsWithEveryFillByName() {
    Chart chart = chart(Display.METRIC);
    assertThat(chart.across().title()).isEqualTo("Travel, mm");
    assertThat(chart.curves())
        .extracting(Chart.Curve::name)
        .containsExactly(
            "least, 300 mL", "nominal, 335 mL", "most, 380 mL", "springs alone", "present, 345 mL");
    assertThat(chart.marks()).extracting(Chart.Mark::name).containsExactly("front sag, 71 mm");
    assertThat(chart(Display.US).across().title()).isEqualTo("Travel, in");
    assertThat(chart(Display.US).across().most()).isBetween(12.0, 12.1);
  }

  /** 305 mm are 12.0 in; both languages show the same numbers with signs of their own. */
  @Test
  void numbersOfAChartHaveTheSignOfTheLanguage() {
    Chart english = chart(Display.US);
    Chart german =
        new ChartWords(new Phrases(Language.GERMAN, Display.US))
            .fork(fork, riding.frontSag())
            .orElseThrow();
    assertThat(english.marks()).extracting(Chart.Mark::name).containsExactly("front sag, 2.8 in");
    assertThat(german.marks().get(0).name()).endsWith(", 2,8 in");
    assertThat(english.across().numerals().aligned(new BigDecimal("2.5"), 1)).isEqualTo("2.5");
    assertThat(german.across().numerals().aligned(new BigDecimal("2.5"), 1)).isEqualTo("2,5");
    assertThat(german.up().numerals()).isEqualTo(german.across().numerals());
  }

  /** The table, the pointer and the drawn points are one: 4.6 N/mm twice over 305 mm is 2806 N. */
  @Test
  void theTableAndThePointerSayTheSame() {
    ChartWords words = new ChartWords(Phrases.english(Display.METRIC));
    Chart chart = chart(Display.METRIC);
    List<String> end = words.table(chart, 11).rows().get(10);
    assertThat(end.get(0)).isEqualTo("305.0");
    assertThat(end.get(4)).isEqualTo("2806");
    assertThat(words.reading(chart, chart.at(305)))
        .startsWith("Travel, mm 305: ")
        .contains("springs alone 2806; present, 345 mL " + end.get(5));
  }

  @Test
  void theOilInTheForkStandsOut() {
    Chart oils =
        new ChartWords(Phrases.english(Display.METRIC))
            .oils(season.shelf().oils(), OilStanding.inFork(timeline))
            .orElseThrow();
    assertThat(oils.curves())
        .filteredOn(curve -> curve.weight() == Chart.Weight.STRONG)
        .extracting(Chart.Curve::name)
        .containsExactly("Cartridge oil, summer");
    assertThat(new ChartWords(Phrases.english(Display.US)).oils(List.of(), Optional.empty()))
        .isEmpty();
  }

  @Test
  void everythingWrittenOnAChartHasAWord() {
    FigureWords words = new FigureWords(Phrases.english(Display.METRIC));
    for (ChartName name : ChartName.values()) {
      assertThat(words.onCharts().names().apply(name)).isNotBlank();
    }
  }
}
