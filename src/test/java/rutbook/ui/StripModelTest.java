package rutbook.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.hours;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Change;
import rutbook.notebook.Due;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.SettingId;
import rutbook.notebook.Timeline;
import rutbook.units.Display;

/** What stands at the top of every page, and what of it a narrow window keeps. */
class StripModelTest {
  private static Notebook ridden(String meter, List<Change> changes) {
    Entry.Session session =
        Bench.session(
            "s-1",
            LocalDate.of(2026, 5, 2),
            Bench.HOLLOW,
            Bench.setup(),
            List.of(Bench.moto("m-1", changes, List.of())));
    return Bench.notebook()
        .with(
            new Entry.Session(
                session.head().withMeter(java.util.Optional.of(hours(meter))),
                session.track(),
                session.rider(),
                session.conditions(),
                session.start(),
                session.motos(),
                session.check()));
  }

  private static StripModel model(String meter, Change... changes) {
    return StripModel.of(Timeline.of(ridden(meter, List.of(changes)), Bench.BIKE), Display.METRIC);
  }

  private static List<SettingId> kept(StripModel model, double room) {
    return model.folded(room, item -> 100).stream().map(item -> item.setting().id()).toList();
  }

  @Test
  void oilIsNearlyDueFromNineTenthsOnDueAtItsIntervalAndOverdueATenthPastIt() {
    assertThat(model("26.9").services().get(0).due()).isEqualTo(Due.NOT_YET);
    assertThat(model("27").services().get(0).due()).isEqualTo(Due.NEARLY);
    assertThat(model("30").services().get(0).due()).isEqualTo(Due.DUE);
    assertThat(model("33.1").services().get(0).due()).isEqualTo(Due.OVERDUE);
  }

  @Test
  void forkStandsBeforeShockBeforeChassis() {
    List<StripModel.Group> groups =
        model("10").items().stream().map(StripModel.Item::group).toList();
    assertThat(groups).isSorted().contains(StripModel.Group.values());
  }

  @Test
  void whatIsOnTheBikeNowIsShownWithTheBaseline() {
    StripModel model = model("10", Change.of(Bench.SHOCK_REBOUND, Reading.of(clicks(14))));
    StripModel.Item rebound =
        model.items().stream()
            .filter(item -> item.setting().id().equals(Bench.SHOCK_REBOUND))
            .findFirst()
            .orElseThrow();
    assertThat(rebound.reading()).isEqualTo(Reading.of(clicks(14)));
    assertThat(rebound.ruler().marks().baseline()).contains(clicks(12));
  }

  @Test
  void aNarrowStripKeepsTheClickersInTheirOrder() {
    assertThat(kept(model("10"), 550))
        .containsExactly(
            Bench.FORK_COMPRESSION,
            Bench.FORK_REBOUND,
            Bench.LOW_SPEED,
            Bench.HIGH_SPEED,
            Bench.SHOCK_REBOUND);
  }

  @Test
  void legsThatDifferAreKeptBeforeAllElse() {
    StripModel model =
        model("10", Change.of(Bench.FORK_REBOUND, Reading.of(clicks(10), clicks(12))));
    assertThat(kept(model, 150)).containsExactly(Bench.FORK_REBOUND);
  }

  @Test
  void aWideStripShowsEverythingAndNoRoomShowsNothing() {
    StripModel model = model("10");
    assertThat(model.folded(100_000, item -> 100)).isEqualTo(model.items());
    assertThat(kept(model, 50)).isEmpty();
  }
}
