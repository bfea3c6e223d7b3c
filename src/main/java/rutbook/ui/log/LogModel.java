package rutbook.ui.log;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
import rutbook.notebook.Notebook;

/**
 * The Log as rows, newest first under their seasons and months, and the trust of its sessions in
 * the order they were ridden.
 *
 * @param shown how many entries fit the filter
 * @param total how many there are
 * @param trust mean trust of each session that says one, oldest first
 */
public record LogModel(List<LogRow> rows, int shown, int total, List<Double> trust) {
  private static final Comparator<Entry> NEWEST_FIRST =
      Comparator.comparing(Entry::day)
          .thenComparingInt(entry -> entry.head().order())
          .thenComparing(entry -> entry.id().text())
          .reversed();

  public LogModel {
    rows = List.copyOf(rows);
    trust = List.copyOf(trust);
  }

  /**
   * @param text what can be searched of an entry, in lower case
   */
  public static LogModel of(Notebook notebook, LogFilter filter, Function<Entry, String> text) {
    List<Entry> entries =
        notebook.entries().stream()
            .filter(filter::fits)
            .filter(entry -> filter.words().isEmpty() || filter.finds(text.apply(entry)))
            .sorted(NEWEST_FIRST)
            .toList();
    return new LogModel(
        grouped(entries), entries.size(), notebook.entries().size(), trust(entries));
  }

  private static List<LogRow> grouped(List<Entry> entries) {
    List<LogRow> rows = new ArrayList<>(entries.size() + 64);
    YearMonth month = null;
    int season = -1;
    for (Entry entry : entries) {
      YearMonth its = YearMonth.from(entry.day());
      if (month == null || its.getYear() != month.getYear()) {
        season = rows.size();
        rows.add(new LogRow.Season(its.getYear(), 0));
      }
      if (!its.equals(month)) {
        rows.add(new LogRow.Month(its));
      }
      month = its;
      rows.add(new LogRow.Item(entry));
      LogRow.Season counted = (LogRow.Season) rows.get(season);
      rows.set(season, new LogRow.Season(counted.year(), counted.entries() + 1));
    }
    return rows;
  }

  private static List<Double> trust(List<Entry> newestFirst) {
    List<Double> trust = new ArrayList<>();
    for (int i = newestFirst.size() - 1; i >= 0; i--) {
      if (newestFirst.get(i) instanceof Entry.Session session) {
        meanTrust(session).ifPresent(trust::add);
      }
    }
    return trust;
  }

  /** Mean trust over the motos of a session that say one. */
  public static OptionalDouble meanTrust(Entry.Session session) {
    return session.motos().stream()
        .map(Moto::report)
        .filter(report -> report.trust().isPresent())
        .mapToInt(report -> report.trust().getAsInt())
        .average();
  }
}
