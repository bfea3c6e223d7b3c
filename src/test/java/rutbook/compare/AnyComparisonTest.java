package rutbook.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import rutbook.notebook.Bike;
import rutbook.notebook.Entry;
import rutbook.notebook.Notebook;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.units.Amount;

/** What holds for the comparison of any two things of any notebook. */
class AnyComparisonTest {
  private static final int MOST_SUBJECTS = 12;

  private static List<Subject> subjects(Notebook notebook, Timeline timeline) {
    List<Subject> all = new ArrayList<>();
    all.add(Subject.now(timeline));
    timeline.entries(Entry.Baseline.class).forEach(each -> all.add(Subject.of(timeline, each)));
    notebook.shelf().tracks().forEach(each -> Subject.best(timeline, each).ifPresent(all::add));
    for (Entry.Session session : timeline.sessions()) {
      Track track = notebook.shelf().track(session.track()).orElseThrow();
      all.add(Subject.of(timeline, session, track));
      for (int i = 0; i < session.motos().size(); i++) {
        all.add(Subject.of(timeline, session, track, i));
      }
    }
    return all.subList(0, Math.min(MOST_SUBJECTS, all.size()));
  }

  @Property(tries = 80, seed = "51")
  void anyTwoAreComparedBothWays(@ForAll(supplier = Notebooks.class) Notebook notebook) {
    comparedBothWays(notebook);
  }

  @Tag("long")
  @Property(tries = 5_000, seed = "52")
  void anyTwoAreComparedBothWaysAtLength(@ForAll(supplier = Notebooks.class) Notebook notebook) {
    comparedBothWays(notebook);
  }

  private static void comparedBothWays(Notebook notebook) {
    for (Bike bike : notebook.bikes()) {
      List<Subject> subjects = subjects(notebook, Timeline.of(notebook, bike.id()));
      for (Subject from : subjects) {
        assertThat(Comparison.of(from, from).settings().isSame()).isTrue();
        for (Subject to : subjects) {
          mirrored(Comparison.of(from, to));
        }
      }
    }
  }

  /** Swapped, what came before comes after, and what grew shrinks. */
  private static void mirrored(Comparison there) {
    Comparison back = there.swapped();
    assertThat(back.settings().rows()).hasSameSizeAs(there.settings().rows());
    assertThat(back.settings().isSame()).isEqualTo(there.settings().isSame());
    for (SettingDifference row : there.settings().rows()) {
      SettingDifference other = back.settings().row(row.setting().id()).orElseThrow();
      assertThat(other.onlyBefore()).isEqualTo(row.onlyAfter());
      assertThat(other.isSame()).isEqualTo(row.isSame());
      for (int i = 0; i < row.legs().size(); i++) {
        LegDifference leg = row.legs().get(i);
        assertThat(other.legs().get(i).sense())
            .isEqualTo(leg.sense().map(sense -> otherWay(row, other, leg)));
        // A millionth of a millimetre is nothing in metres, whatever its sense.
        assertThat(sign(other.legs().get(i)) * sign(leg)).isNotPositive();
      }
    }
    assertThat(back.sag()).hasSameSizeAs(there.sag());
    assertThat(back.feel()).hasSameSizeAs(there.feel());
  }

  /** A later sheet may count the other way round only under another id. */
  private static rutbook.notebook.Sense otherWay(
      SettingDifference row, SettingDifference other, LegDifference leg) {
    return row.setting().scale().greater() == other.setting().scale().greater()
        ? leg.sense().orElseThrow().opposite()
        : leg.sense().orElseThrow();
  }

  private static int sign(LegDifference leg) {
    return leg.by().map(Amount::value).map(java.math.BigDecimal::signum).orElse(0);
  }

  @Property(tries = 80, seed = "53")
  void whatIsFoundDoesNotDependOnTheOrderOfStorage(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    Notebook other = Notebooks.shuffled(notebook, seed);
    for (Bike bike : notebook.bikes()) {
      Timeline before = Timeline.of(notebook, bike.id());
      Timeline after = Timeline.of(other, bike.id());
      assertThat(BikeCheck.of(after)).isEqualTo(BikeCheck.of(before));
      assertThat(subjects(other, after)).isEqualTo(subjects(notebook, before));
    }
  }
}
