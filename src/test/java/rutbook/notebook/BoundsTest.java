package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.floz;
import static rutbook.notebook.Bench.ml;

import java.util.List;
import org.junit.jupiter.api.Test;

class BoundsTest {
  private final Sheet sheet = Bench.sheet();

  @Test
  void aChosenReadingBeyondALimitIsRefusedWithTheLimit() {
    Setup beyond = Bench.setup().with(Placed.set(Bench.FORK_OIL, Reading.bothLegs(ml("390"))));
    assertThatThrownBy(() -> Bench.notebook().with(Bench.baseline(beyond)))
        .isInstanceOfSatisfying(
            NotebookException.class,
            fault -> {
              assertThat(fault.fault()).isEqualTo(Fault.ABOVE_MOST);
              assertThat(fault.where()).isEqualTo("entries/base-1/setup");
              assertThat(fault.facts()).contains(ml("390"), ml("380"));
            });
  }

  @Test
  void aFoundReadingBeyondALimitIsKept() {
    Placed found = Placed.found(Bench.FORK_OIL, Reading.of(ml("390"), ml("335")));
    Notebook notebook = Bench.notebook().with(Bench.baseline(Bench.setup().with(found)));
    Setting oil = sheet.setting(Bench.FORK_OIL).orElseThrow();
    assertThat(Timeline.of(notebook, Bench.BIKE).now().placed(Bench.FORK_OIL)).contains(found);
    assertThat(Bounds.isInside(sheet, oil, found.reading())).isFalse();
  }

  @Test
  void aLimitIsHeldExactlyAcrossUnits() {
    Setting oil = sheet.setting(Bench.FORK_OIL).orElseThrow();
    // 12.849 fl oz is 379.99 mL; 12.85 fl oz is 380.02 mL.
    assertThat(Bounds.refusal(sheet, oil, floz("12.849"))).isEmpty();
    assertThat(Bounds.refusal(sheet, oil, floz("12.85"))).isPresent();
    assertThat(Bounds.hold(sheet, oil, Reading.bothLegs(floz("12.85"))))
        .isEqualTo(Reading.bothLegs(ml("380")));
  }

  @Test
  void clicksCountWholeAndNearStopsAreTold() {
    Setting compression = sheet.setting(Bench.FORK_COMPRESSION).orElseThrow();
    assertThat(
            Bounds.refusal(
                    sheet,
                    compression,
                    rutbook.units.Amount.of("7.5", rutbook.units.ClickUnit.CLICK))
                .orElseThrow()
                .fault())
        .isEqualTo(Fault.OFF_THE_STEPS);
    assertThat(List.of(0L, 2L, 3L, 19L, 20L, 22L))
        .extracting(number -> Bounds.isNearStop(sheet, compression, clicks(number)))
        .containsExactly(true, true, false, false, true, true);
  }

  @Test
  void whatIsChosenMayStandOnALimit() {
    Setting oil = sheet.setting(Bench.FORK_OIL).orElseThrow();
    assertThat(Bounds.refusal(sheet, oil, ml("300"))).isEmpty();
    assertThat(Bounds.refusal(sheet, oil, ml("380"))).isEmpty();
    NotebookException below = Bounds.refusal(sheet, oil, ml("299.9")).orElseThrow();
    assertThat(below.fault()).isEqualTo(Fault.BELOW_LEAST);
    assertThat(below.facts()).containsExactly("Outer chamber oil", ml("299.9"), ml("300"));
  }

  @Test
  void anotherKindOfUnitIsNeitherChosenNorInside() {
    Setting oil = sheet.setting(Bench.FORK_OIL).orElseThrow();
    assertThat(Bounds.refusal(sheet, oil, clicks(335)).orElseThrow().fault())
        .isEqualTo(Fault.WRONG_UNIT);
    assertThat(Bounds.isInside(sheet, oil, Reading.bothLegs(clicks(335)))).isFalse();
    assertThatThrownBy(
            () -> Bounds.requireChoosable(sheet, oil, Reading.of(ml("335"), clicks(335))))
        .hasMessageContaining("WRONG_UNIT");
  }

  @Test
  void aReadingFitsWithTheLegsAndTheUnitOfItsSetting() {
    Setting oil = sheet.setting(Bench.FORK_OIL).orElseThrow();
    Bounds.requireChoosable(sheet, oil, Reading.bothLegs(floz("11")));
    assertThatThrownBy(() -> Bounds.requireFits(oil, Reading.bothLegs(clicks(3))))
        .hasMessageContaining("WRONG_UNIT");
    assertThatThrownBy(() -> Bounds.requireChoosable(sheet, oil, Reading.of(ml("335"))))
        .hasMessageContaining("WRONG_LEGS");
  }

  @Test
  void insideIsWithEveryLegAndOnTheLimitsToo() {
    Setting oil = sheet.setting(Bench.FORK_OIL).orElseThrow();
    assertThat(Bounds.isInside(sheet, oil, Reading.of(ml("300"), ml("380")))).isTrue();
    assertThat(Bounds.isInside(sheet, oil, Reading.of(ml("335"), ml("381")))).isFalse();
    Reading unknown = Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_NOTED);
    assertThat(Bounds.isInside(sheet, oil, unknown)).isTrue();
  }

  @Test
  void aFillHasNoStopToStandNear() {
    Setting oil = sheet.setting(Bench.FORK_OIL).orElseThrow();
    assertThat(Bounds.isNearStop(sheet, oil, ml("380"))).isFalse();
  }
}
