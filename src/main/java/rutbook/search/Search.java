package rutbook.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What was found on a shelf.
 *
 * @param hits newest first, at most as many as were asked for
 * @param found how many there are
 */
public record Search(List<Hit> hits, int found) {
  private static final Comparator<Hit> NEWEST_FIRST =
      Comparator.comparing(Hit::day)
          .reversed()
          .thenComparing(Hit::notebook)
          .thenComparing(hit -> hit.entry().text());

  public Search {
    hits = List.copyOf(hits);
  }

  /**
   * The entries of all notebooks that have every word.
   *
   * @param most hits that are given back
   */
  public static Search of(List<Indexed> shelf, Query query, int most) {
    List<Hit> all = new ArrayList<>();
    for (Indexed notebook : shelf) {
      for (Indexed.Line line : notebook.lines()) {
        if (query.isIn(line.text())) {
          all.add(line.hit());
        }
      }
    }
    all.sort(NEWEST_FIRST);
    List<Hit> shown = all.stream().limit(most).map(hit -> hit.withOnly(query)).toList();
    return new Search(shown, all.size());
  }
}
