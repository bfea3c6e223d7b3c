package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rutbook.notebook.Bench.clicks;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import rutbook.units.Display;

/** A notebook is what it says; a change makes another one and leaves the rest. */
class NotebookTest {
  private static final LocalDate APRIL = LocalDate.of(2026, 4, 4);
  private static final NotebookId OTHER = new NotebookId("nb-2");
  private static final List<RuleChange> RULES =
      List.of(new RuleChange("front-dives", BigDecimal.ONE, "heavy bike"));

  private static Entry.Session ride(String id, int order, Setup start) {
    Entry.Session session = Bench.session(id, APRIL, Bench.HOLLOW, start, List.of());
    return session.with(session.head().on(APRIL, order));
  }

  private static Entry.RebuildJob job(String id, EntryId baseline) {
    Job job =
        new Job(
            Scope.FORK,
            Set.of(Renewed.OIL),
            baseline,
            Bench.setup(),
            Bench.SPRING,
            Optional.empty());
    return new Entry.RebuildJob(
        Head.of(new EntryId(id), Bench.BIKE, APRIL, 0), job, List.of(), Outcome.UNDER_WAY);
  }

  private static Notebook of(Entry... entries) {
    return Notebook.of(
        new NotebookId("nb-1"), Bench.shelf(), List.of(entries), List.of(), Display.METRIC);
  }

  @Test
  void anEmptyNotebookHasNothingButItsName() {
    Notebook empty = Notebook.empty(OTHER);
    assertThat(empty)
        .isEqualTo(Notebook.of(OTHER, Shelf.EMPTY, List.of(), List.of(), Display.METRIC));
    assertThat(empty.id()).isEqualTo(OTHER);
    assertThat(empty.bikes()).isEmpty();
    assertThat(empty).hasToString("Notebook nb-2 with 0 entries");
  }

  @Test
  void twoNotebooksAreTheSameWhenEverythingIs() {
    Notebook notebook = Bench.notebook();
    assertThat(Bench.notebook()).isEqualTo(notebook).hasSameHashCodeAs(notebook);
    List<UnaryOperator<Notebook>> changes =
        List.of(
            each -> each.copiedAs(OTHER),
            each -> each.with(Bench.bike().named("Another")),
            each -> each.without(Bench.FIRST_BASELINE),
            each -> each.withRuleChanges(RULES),
            each -> each.with(Display.US));
    for (UnaryOperator<Notebook> change : changes) {
      assertThat(change.apply(notebook)).isNotEqualTo(notebook);
      assertThat(change.apply(notebook).hashCode()).isNotEqualTo(notebook.hashCode());
      assertThat(change.apply(notebook)).isEqualTo(change.apply(Bench.notebook()));
    }
    assertThat(notebook).isNotEqualTo(null).isNotEqualTo("nb-1");
  }

  @Test
  void aChangeOfOnePartLeavesTheOthers() {
    Notebook notebook = Bench.notebook();
    assertThat(notebook.with(Display.US).display()).isEqualTo(Display.US);
    assertThat(notebook.with(Display.US).with(notebook.display())).isEqualTo(notebook);
    assertThat(notebook.withRuleChanges(RULES).ruleChanges()).isEqualTo(RULES);
    assertThat(notebook.withRuleChanges(RULES).withRuleChanges(List.of())).isEqualTo(notebook);
    assertThat(notebook.copiedAs(OTHER).copiedAs(notebook.id())).isEqualTo(notebook);
    Entry another = ride("s-1", 0, Bench.setup());
    assertThat(notebook.with(another).entries())
        .containsExactly(Bench.baseline(Bench.setup()), another);
    assertThat(notebook.with(another).without(another.id())).isEqualTo(notebook);
    assertThat(notebook.bikes()).containsExactly(Bench.bike());
    assertThatThrownBy(() -> notebook.withRuleChanges(List.of(RULES.get(0), RULES.get(0))))
        .hasMessageContaining("TWICE");
  }

  /** Read from a file, a job may stand before the baseline that it names. */
  @Test
  void anEntryMayNameOneThatIsStoredBehindIt() {
    Entry.RebuildJob job = job("job-1", Bench.FIRST_BASELINE);
    Notebook notebook = of(job, Bench.baseline(Bench.setup()));
    assertThat(notebook.entry(job.id())).contains(job);
    assertThatThrownBy(() -> of(job)).hasMessageContaining("UNKNOWN_ID [entry, base-1]");
  }

  @Test
  void aBaselineThatAJobNamesStaysWithItsBike() {
    BikeId other = new BikeId("bike-2");
    Notebook notebook =
        Bench.notebook()
            .with(new Bike(other, "Other", List.of(Bench.sheet())))
            .with(job("job-1", Bench.FIRST_BASELINE));
    Entry moved =
        Bench.baseline(Bench.setup()).with(Head.of(Bench.FIRST_BASELINE, other, APRIL, 0));
    assertThatThrownBy(() -> notebook.with(moved))
        .hasMessageContaining("entries/job-1")
        .hasMessageContaining("UNKNOWN_ID [entry, base-1]");
  }

  /** Neighbouring setups share what did not change; what did is checked all the same. */
  @Test
  void aBadReadingIsRefusedBehindAnySetupThatWasGood() {
    Setup bad = Bench.setup().with(Placed.set(Bench.FORK_REBOUND, Reading.bothLegs(clicks(21))));
    Entry.Session good = ride("s-1", 1, Bench.setup());
    assertThat(of(good, ride("s-2", 2, good.start())).entries()).hasSize(2);
    assertThatThrownBy(() -> of(good, ride("s-2", 2, bad)))
        .hasMessageContaining("entries/s-2/start")
        .hasMessageContaining("ABOVE_MOST");
    Setup changed = good.start().with(Placed.set(Bench.FORK_REBOUND, Reading.bothLegs(clicks(21))));
    assertThatThrownBy(() -> of(good, ride("s-2", 2, changed)))
        .hasMessageContaining("entries/s-2/start");
    List<Placed> fewer = new ArrayList<>(good.start().placed());
    fewer.remove(fewer.size() - 1);
    assertThatThrownBy(() -> of(good, ride("s-2", 2, new Setup(fewer))))
        .hasMessageContaining("MISSING_SETTING");
  }

  /** Moved to another day and back, an entry of any kind is the same. */
  @Test
  void anEntryMovedToAnotherDayAndBackIsTheSame() {
    for (int seed = 0; seed < 4; seed++) {
      for (Entry entry : Notebooks.of(seed, 20).entries()) {
        Head moved = entry.head().on(entry.day().plusDays(1), 7).withNote("moved");
        assertThat(entry.with(moved).head()).isEqualTo(moved);
        assertThat(entry.with(moved)).isNotEqualTo(entry);
        assertThat(entry.with(moved).with(entry.head())).isEqualTo(entry);
      }
    }
  }
}
