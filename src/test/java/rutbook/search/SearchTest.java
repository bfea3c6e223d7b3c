package rutbook.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rutbook.notebook.Bench;
import rutbook.notebook.Entry;
import rutbook.notebook.EntryId;
import rutbook.notebook.Head;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;
import rutbook.notebook.Notebooks;
import rutbook.notebook.Rider;
import rutbook.notebook.Track;

class SearchTest {
  private static final Indexed BENCH = Indexed.of("bench", bench());

  /** Two sessions on two tracks, a note in a moto of the second. */
  private static Notebook bench() {
    Moto noted =
        Bench.moto("m1", List.of(), List.of())
            .withNote("Größere Bodenwellen; it KICKS at the rear");
    Entry.Session first =
        Bench.session("s1", Bench.SPRING.plusDays(1), Bench.HOLLOW, Bench.setup(), List.of());
    Entry.Session second =
        Bench.session("s2", Bench.SPRING.plusDays(9), Bench.DUNE, Bench.setup(), List.of(noted));
    return Bench.notebook().with(first).with((Entry) second);
  }

  private static List<String> found(String typed) {
    return Search.of(List.of(BENCH), Query.of(typed), 100).hits().stream()
        .map(hit -> hit.entry().text())
        .toList();
  }

  @Test
  void aSessionIsFoundByRiderBikeTrackAndDay() {
    Notebook notebook = bench();
    Track dune = notebook.shelf().track(Bench.DUNE).orElseThrow();
    Rider rider = notebook.shelf().riders().get(0);
    String bike = notebook.bikes().get(0).name();
    assertThat(found(dune.name())).containsExactly("s2");
    assertThat(found(Bench.SPRING.plusDays(9).toString())).containsExactly("s2");
    assertThat(found('"' + rider.name() + "\" " + dune.name())).containsExactly("s2");
    assertThat(found('"' + bike + '"')).contains("s1", "s2");
  }

  @ParameterizedTest
  @CsvSource({
    "kicks, s2",
    "REAR kick, s2",
    "größere, s2",
    "grossere, s2",
    "GRÖSSERE bodenwellen, s2",
    "'\"kicks at the\"', s2",
  })
  void wordsAreFoundInNotesWhateverTheirLettersAndOrder(String typed, String id) {
    assertThat(found(typed)).containsExactly(id);
  }

  @ParameterizedTest
  @CsvSource({"'\"at the kicks\"'", "kicks nowhere", "''", "'  '", "'\"\"'"})
  void whatIsNotThereAndWhatIsNothingIsNotFound(String typed) {
    assertThat(found(typed)).isEmpty();
  }

  @Test
  void aHitSaysOnlyWhatWasLookedFor() {
    Hit hit = Search.of(List.of(BENCH), Query.of("kicks"), 1).hits().get(0);
    assertThat(hit.written()).containsExactly("Größere Bodenwellen; it KICKS at the rear");
    assertThat(hit.notebook()).isEqualTo("bench");
    Hit byDay = Search.of(List.of(BENCH), Query.of("2026"), 1).hits().get(0);
    assertThat(byDay.written()).isEmpty();
  }

  @Test
  void theNewestIsFirstAndTheRestIsCounted() {
    Search search = Search.of(List.of(BENCH, Indexed.of("copy", bench())), Query.of("bench"), 1);
    assertThat(search.hits()).hasSize(1);
    assertThat(search.hits().get(0).day()).isEqualTo(Bench.SPRING.plusDays(9));
    assertThat(search.found()).isEqualTo(bench().entries().size());
  }

  /**
   * Whatever is in a notebook: each of its entries is found by its day and any word of its note.
   */
  @Test
  void everyEntryOfAnyNotebookIsFoundByItsDayAndItsNote() {
    for (int seed = 0; seed < 40; seed++) {
      Notebook notebook = Notebooks.of(seed, 12);
      List<Indexed> shelf = List.of(Indexed.of("any", notebook));
      for (Entry entry : notebook.entries()) {
        Head head = entry.head();
        for (String word : (head.note() + " " + head.day()).split("[\\s\\h\"]+")) {
          if (!Query.of(word).words().isEmpty()) {
            List<EntryId> ids =
                Search.of(shelf, Query.of(word + " " + head.day()), 1000).hits().stream()
                    .map(Hit::entry)
                    .toList();
            assertThat(ids).as("%s in %s", word, head.note()).contains(entry.id());
          }
        }
      }
    }
  }
}
