package rutbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Entered;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.StepDone;
import rutbook.notebook.StepId;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.Ask;
import rutbook.rebuild.Plan;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.rebuild.ShopSheet;
import rutbook.samples.Samples;
import rutbook.units.Amount;
import rutbook.units.Duration;

class SheetsTest {
  private final Notebook season = Samples.season();
  private final Timeline timeline = SampleCards.timeline(season);
  private final Cards cards = SampleCards.cards(season, SampleCards.phrases(season));

  private PlanFrom from(Scope scope) {
    return PlanFrom.beginning(timeline, scope, Set.of(Renewed.OIL)).orElseThrow();
  }

  private static List<Card.Step> steps(Card card) {
    return card.blocks().stream()
        .filter(Card.Work.class::isInstance)
        .flatMap(block -> ((Card.Work) block).list().stream())
        .toList();
  }

  @Test
  void everyStepOfThePlanStandsOnTheSheetOnceInItsOrderWithItsBoxes() {
    Plan plan = Planner.plan(from(Scope.BOTH), Advisor.SILENT);
    List<Card.Step> steps = steps(cards.workSheet(plan, ZoneOffset.UTC));
    assertThat(steps).hasSameSizeAs(plan.steps());
    for (int i = 0; i < steps.size(); i++) {
      Ask ask = plan.steps().get(i).ask();
      assertThat(steps.get(i).number()).isEqualTo(i + 1);
      int boxes = ask.form() == Ask.Form.TICK ? (ask.words() ? 2 : 1) : ask.bothLegs() ? 3 : 2;
      assertThat(steps.get(i).boxes()).as(steps.get(i).what()).hasSize(boxes);
      assertThat(steps.get(i).cautions()).hasSameSizeAs(plan.steps().get(i).cautions());
    }
  }

  @Test
  void whatIsDoneStandsTickedWithItsValueAndTimeAndTheRestHasItsBoxes() {
    PlanFrom from = from(Scope.FORK);
    Instant noon = Instant.parse("2026-10-17T12:00:00Z");
    Plan plan =
        Planner.plan(
            new PlanFrom(
                from.sheet(),
                from.baseline(),
                from.job(),
                List.of(
                    new StepDone(
                        StepId.METER,
                        noon,
                        new Entered.Measured(
                            Reading.of(Amount.of("101.8", Duration.HOUR)), Optional.empty())),
                    new StepDone(new StepId("stand"), noon, new Entered.Skipped("no stand")))),
            Advisor.SILENT);
    Card card = cards.workSheet(plan, ZoneOffset.UTC);
    assertThat(steps(card)).filteredOn(step -> !step.done().isEmpty()).hasSize(2);
    assertThat(CardText.of(card))
        .contains("[x] 1. Read the hour meter", "= 101.8 h, 17 Oct 12:00")
        .contains("= left out: no stand, 17 Oct 12:00")
        .contains("[ ] 2. ");
    String html = new CardHtml(Locale.UK).page(card);
    assertThat(html).contains("101.8 h, 17 Oct 12:00");
    assertThat(html.split("class=\"entered\"", -1)).hasSize(3);
  }

  @Test
  void theFillStandsWithItsLimitsInBothSystemsOfUnits() {
    Plan plan = Planner.plan(from(Scope.FORK), Advisor.SILENT);
    assertThat(CardText.of(cards.workSheet(plan, ZoneOffset.UTC)))
        .contains("to 345 mL", "allowed 300 to 380 mL (10.15 to 12.84 fl oz)")
        .contains("! Springs and caps are under load.");
  }

  @Test
  void theShopSheetTellsTheShopWhatItNeedsAndIsOnePage() throws IOException {
    PlanFrom from = from(Scope.SHOCK);
    Card card = cards.shopSheet(ShopSheet.of(season.shelf(), timeline, from), from.sheet());
    try (PDDocument document = Loader.loadPDF(new CardPdf(Locale.UK).pdf(card, Paper.LETTER))) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      assertThat(new PDFTextStripper().getText(document))
          .contains("Rider in gear: 81 kg (179 lb)", "Race sag to reach: 105 mm (4.13 in)")
          .contains("Never open a gas-charged reservoir", "Shock rebound as handed back");
    }
  }
}
