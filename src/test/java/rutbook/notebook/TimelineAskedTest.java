package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rutbook.notebook.Bench.clicks;
import static rutbook.notebook.Bench.mm;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rutbook.units.Display;

/** What a timeline is asked: sag, baselines and what is on the bike at any entry. */
class TimelineAskedTest {
  private static final LocalDate APRIL = LocalDate.of(2026, 4, 4);

  private static Timeline of(Notebook notebook) {
    return Timeline.of(notebook, Bench.BIKE);
  }

  private static Notebook notebook(Entry... entries) {
    return Notebook.of(
        new NotebookId("nb-1"), Bench.shelf(), List.of(entries), List.of(), Display.METRIC);
  }

  private static Entry.Session ride(String id, Change... changes) {
    return Bench.session(
        id,
        APRIL,
        Bench.HOLLOW,
        Bench.setup(),
        List.of(Bench.moto(id + "-m1", List.of(changes), List.of())));
  }

  private static Entry.SagMeasured sag(String id, LocalDate day, End end, String race) {
    return new Entry.SagMeasured(
        Head.of(new EntryId(id), Bench.BIKE, day, 0),
        end,
        Optional.of(mm(race)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  @Test
  void sagIsTheLastOfItsEndByThatDay() {
    Entry.SagMeasured first = sag("sag-1", APRIL, End.REAR, "104");
    Entry.SagMeasured front = sag("sag-2", APRIL.plusDays(1), End.FRONT, "70");
    Entry.SagMeasured second = sag("sag-3", APRIL.plusDays(2), End.REAR, "102");
    Timeline timeline = of(Bench.notebook().with(first).with(front).with(second));
    assertThat(timeline.sag(End.REAR)).contains(second);
    assertThat(timeline.sag(End.FRONT)).contains(front);
    assertThat(timeline.sagOn(End.REAR, APRIL.plusDays(1))).contains(first);
    assertThat(timeline.sagOn(End.REAR, APRIL)).contains(first);
    assertThat(timeline.sagOn(End.REAR, APRIL.minusDays(1))).isEmpty();
    assertThat(of(Bench.notebook().with(sag("a", Bench.SPRING, End.REAR, "99"))).sag(End.REAR))
        .map(Entry.SagMeasured::race)
        .contains(Optional.of(mm("99")));
  }

  @Test
  void theBaselineOfADayIsTheNewestByThen() {
    Entry.Baseline first = Bench.baseline(Bench.setup());
    Entry.Baseline second = first.with(Head.of(new EntryId("base-2"), Bench.BIKE, APRIL, 0));
    Timeline timeline = of(Bench.notebook().with(second).with(ride("s-1")));
    assertThat(timeline.baseline()).contains(second);
    assertThat(of(Bench.notebook()).baseline()).contains(first);
    assertThat(timeline.baselineOn(APRIL)).contains(second);
    assertThat(timeline.baselineOn(APRIL.minusDays(1))).contains(first);
    assertThat(timeline.baselineOn(Bench.SPRING.minusDays(1))).isEmpty();
    assertThat(timeline.latest(Entry.Serviced.class)).isEmpty();
    assertThat(timeline.latest(Entry.Session.class).map(Entry::id)).contains(new EntryId("s-1"));
    assertThat(timeline.lastDay()).contains(APRIL);
    assertThat(timeline.bike()).isEqualTo(Bench.bike());
  }

  @Test
  void aBikeOfWhichNothingIsNotedHasNoDay() {
    BikeId other = new BikeId("bike-2");
    Notebook notebook = Bench.notebook().with(new Bike(other, "Other", List.of(Bench.sheet())));
    Timeline empty = Timeline.of(notebook, other);
    assertThat(empty.lastDay()).isEmpty();
    assertThat(empty.baseline()).isEmpty();
    assertThat(empty.now()).isEqualTo(Setup.EMPTY);
    assertThatThrownBy(() -> Timeline.of(notebook, new BikeId("bike-3")))
        .hasMessageContaining("UNKNOWN_ID [bike, bike-3]");
  }

  /** Entries of one day go by their place in it, not by their names. */
  @Test
  void thePlaceInTheDayComesBeforeTheName() {
    Entry late = ride("a").with(Head.of(new EntryId("a"), Bench.BIKE, APRIL, 2));
    Entry early = ride("z").with(Head.of(new EntryId("z"), Bench.BIKE, APRIL, 1));
    assertThat(of(Bench.notebook().with(late).with(early)).entries())
        .extracting(entry -> entry.id().text())
        .containsExactly("base-1", "z", "a");
  }

  /** A day starts with every setting; of what nobody noted it says so. */
  @Test
  void aSettingOfWhichNothingIsNotedIsUnknownAtTheStart() {
    Setting added = Bench.clicker(new SettingId("new"), "New", Role.OTHER, 10, Sense.FIRMER);
    List<Setting> more = new ArrayList<>(Bench.settings());
    more.add(added);
    Sheet later = Bench.sheet().with(APRIL, "new adjuster").withSettings(more);
    Setup start = of(Bench.notebook().with(Bench.bike().with(later))).startOn(APRIL);
    assertThat(start)
        .isEqualTo(
            Bench.setup()
                .with(
                    Placed.found(
                        added.id(), Reading.unknown(Carrier.SINGLE, WhyUnknown.NOT_NOTED))));
  }

  /** Before and after each of many entries, told from a fold over all of them from the first. */
  @Test
  void whatIsOnTheBikeAtAnyEntryIsAllThatWasDoneByThen() {
    Notebook notebook = Bench.notebook();
    for (int i = 0; i < 30; i++) {
      Entry.Adjusted click =
          new Entry.Adjusted(
              Head.of(new EntryId("a-" + i), Bench.BIKE, APRIL.plusDays(i), 0),
              List.of(Change.of(Bench.FORK_REBOUND, Reading.bothLegs(clicks(i % 20)))));
      notebook = notebook.with(click);
    }
    Timeline timeline = of(notebook);
    Setup setup = Bench.setup();
    for (Entry.Adjusted click : timeline.entries(Entry.Adjusted.class)) {
      assertThat(timeline.before(click.id())).isEqualTo(setup);
      setup = setup.after(click.changes());
      assertThat(timeline.after(click.id())).isEqualTo(setup);
    }
    assertThat(timeline.before(Bench.FIRST_BASELINE)).isEqualTo(Setup.EMPTY);
    assertThat(timeline.after(Bench.FIRST_BASELINE)).isEqualTo(Bench.setup());
    assertThat(timeline.now()).isEqualTo(setup);
    assertThatThrownBy(() -> timeline.before(new EntryId("none")))
        .hasMessageContaining("UNKNOWN_ID [entry, none]");
  }

  @Test
  void aSessionThatIsTheFirstThingNotedSaysWhatIsOnTheBike() {
    Change softer = Change.of(Bench.FORK_COMPRESSION, Reading.bothLegs(clicks(14)));
    Entry.Session first = ride("s-1", softer);
    assertThat(of(notebook(first)).now()).isEqualTo(first.end());
    assertThat(of(notebook(first)).sessions()).containsExactly(first);
  }
}
