package rutbook.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Carrier;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.NotebookException;
import rutbook.notebook.Placed;
import rutbook.notebook.Range;
import rutbook.notebook.Reading;
import rutbook.notebook.Role;
import rutbook.notebook.Setting;
import rutbook.notebook.SettingId;
import rutbook.notebook.Sheet;
import rutbook.notebook.WhyUnknown;

class NewSettingsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 4, 4);
  private static final Setting FORK_PRELOAD =
      Bench.measured(
          new SettingId("fork-preload"),
          "Fork preload",
          Role.FORK_PRELOAD,
          Carrier.PAIR,
          new Range(Bench.mm("0"), Bench.mm("12")),
          "1");
  private static final Placed NOT_NOTED =
      Placed.found(FORK_PRELOAD.id(), Reading.unknown(Carrier.PAIR, WhyUnknown.NOT_NOTED));

  private static Sheet with(Setting setting) {
    List<Setting> settings = new ArrayList<>(Bench.sheet().settings());
    settings.add(setting);
    return Bench.sheet().withSettings(settings);
  }

  @Test
  void aSettingAddedToASheetIsUnknownInWhatWasNotedUnderIt() {
    Notebook ridden =
        Bench.notebook().with(Bench.session("s-1", DAY, Bench.HOLLOW, Bench.setup(), List.of()));

    Notebook after = new ShelfEdit.PutSheet(Bench.BIKE, with(FORK_PRELOAD)).applyTo(ridden);

    assertThat(after.entries())
        .containsExactly(
            Bench.baseline(Bench.setup().with(NOT_NOTED)),
            Bench.session("s-1", DAY, Bench.HOLLOW, Bench.setup().with(NOT_NOTED), List.of()));
  }

  @Test
  void aNewSheetLeavesWhatWasNotedBeforeItAsItWas() {
    Notebook ridden =
        Bench.notebook().with(Bench.session("s-1", DAY, Bench.HOLLOW, Bench.setup(), List.of()));

    Notebook after =
        new ShelfEdit.PutSheet(Bench.BIKE, with(FORK_PRELOAD).with(DAY.plusDays(1), "preload"))
            .applyTo(ridden);

    assertThat(after.entries()).isEqualTo(ridden.entries());
    assertThat(after.shelf().bike(Bench.BIKE).orElseThrow().sheets()).hasSize(2);
  }

  @Test
  void aSettingThatWasReadIsNotTakenOffItsSheet() {
    Notebook ridden = Bench.notebook();
    Sheet without = Bench.sheet().withSettings(Bench.sheet().settings().subList(1, 13));
    assertThatThrownBy(() -> new ShelfEdit.PutSheet(Bench.BIKE, without).applyTo(ridden))
        .isInstanceOf(NotebookException.class)
        .hasMessageContaining("entries/base-1/setup");
    assertThat(ridden.entries()).hasOnlyElementsOfType(Entry.Baseline.class);
  }
}
