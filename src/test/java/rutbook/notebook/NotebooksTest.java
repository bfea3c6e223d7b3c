package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds for every notebook; and that the random notebooks are as varied as they should be. */
class NotebooksTest {
  @Test
  void theRandomNotebooksHaveEverythingInThem() {
    Set<Class<?>> kinds = new HashSet<>();
    Set<Carrier> carriers = new HashSet<>();
    Set<Role> roles = new HashSet<>();
    Set<Datum> data = new HashSet<>();
    Set<How> outside = new HashSet<>();
    Set<Integer> bikes = new HashSet<>();
    Set<Integer> sheets = new HashSet<>();
    for (int seed = 0; seed < 60; seed++) {
      Notebook notebook = Notebooks.of(seed, 20);
      notebook.entries().forEach(entry -> kinds.add(entry.getClass()));
      bikes.add(notebook.bikes().size());
      for (Bike bike : notebook.bikes()) {
        sheets.add(bike.sheets().size());
        Sheet sheet = bike.latestSheet();
        sheet.settings().forEach(each -> carriers.add(each.carrier()));
        sheet.settings().forEach(each -> roles.add(each.role()));
        sheet.settings().forEach(each -> data.add(each.scale().datum()));
        for (Placed placed : Timeline.of(notebook, bike.id()).now().placed()) {
          sheet
              .setting(placed.setting())
              .filter(setting -> !Bounds.isInside(sheet, setting, placed.reading()))
              .ifPresent(setting -> outside.add(placed.how()));
        }
      }
    }
    assertThat(kinds).containsExactlyInAnyOrder(Entry.class.getPermittedSubclasses());
    assertThat(carriers).containsExactlyInAnyOrder(Carrier.values());
    assertThat(data).containsExactlyInAnyOrder(Datum.values());
    assertThat(roles).hasSize(Role.values().length - 1); // no second compression adjuster in a fork
    assertThat(outside).contains(How.FOUND);
    assertThat(bikes).containsExactlyInAnyOrder(1, 2, 3);
    assertThat(sheets).containsExactlyInAnyOrder(1, 2, 3);
  }

  @Property(tries = 150, seed = "31")
  void theOrderInWhichEntriesAreStoredMeansNothing(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    orderMeansNothing(notebook, seed);
  }

  @Tag("long")
  @Property(tries = 10_000, seed = "32")
  void theOrderInWhichEntriesAreStoredMeansNothingAtLength(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    orderMeansNothing(notebook, seed);
  }

  private static void orderMeansNothing(Notebook notebook, long seed) {
    Notebook other = Notebooks.shuffled(notebook, seed);
    for (Bike bike : notebook.bikes()) {
      Timeline before = Timeline.of(notebook, bike.id());
      Timeline after = Timeline.of(other, bike.id());
      assertThat(after.entries()).isEqualTo(before.entries());
      assertThat(after.now()).isEqualTo(before.now());
      assertThat(after.baseline()).isEqualTo(before.baseline());
      assertThat(after.hours().total()).isEqualTo(before.hours().total());
      for (ServiceItem item : bike.latestSheet().services()) {
        assertThat(after.hours().since(item)).isEqualTo(before.hours().since(item));
      }
      for (Entry entry : before.entries()) {
        assertThat(after.before(entry.id())).isEqualTo(before.before(entry.id()));
        assertThat(after.hours().at(entry.id())).isEqualTo(before.hours().at(entry.id()));
      }
    }
  }

  /** Set readings are inside, whatever happened before; found ones may be anywhere. */
  @Property(tries = 150, seed = "33")
  void whatWasSetIsInsideTheLimitsOfItsDay(@ForAll(supplier = Notebooks.class) Notebook notebook) {
    for (Bike bike : notebook.bikes()) {
      for (Entry.Session session : Timeline.of(notebook, bike.id()).sessions()) {
        Sheet sheet = bike.sheetOn(session.day());
        for (int i = 0; i < session.motos().size(); i++) {
          assertThat(outside(sheet, session.setupOf(i))).isEmpty();
        }
        assertThat(outside(sheet, session.end())).isEmpty();
      }
    }
  }

  /** What a day would start with is a setup that the notebook takes. */
  @Property(tries = 150, seed = "34")
  void aSessionCanAlwaysStartWithWhatIsOnTheBike(
      @ForAll(supplier = Notebooks.class) Notebook notebook, @ForAll long seed) {
    Dice dice = new Dice(new java.util.Random(seed));
    for (Bike bike : notebook.bikes()) {
      Head head = new RandomEntries(dice, notebook.shelf()).head(bike);
      Setup start = Timeline.of(notebook, bike.id()).startOn(head.day());
      Entry.Session session = new RandomEntries(dice, notebook.shelf()).session(head);
      Notebook next = notebook.with(session.withStart(start).withMotos(List.of()));
      assertThat(next.entry(head.id())).isPresent();
    }
  }

  private static List<Placed> outside(Sheet sheet, Setup setup) {
    return setup.placed().stream()
        .filter(placed -> placed.how() == How.SET)
        .filter(
            placed ->
                !Bounds.isInside(
                    sheet, sheet.setting(placed.setting()).orElseThrow(), placed.reading()))
        .toList();
  }
}
