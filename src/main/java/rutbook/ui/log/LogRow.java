package rutbook.ui.log;

import java.time.YearMonth;
import rutbook.notebook.Entry;

/** A row of the Log: a season, a month, or something that happened. */
public sealed interface LogRow {
  record Season(int year, int entries) implements LogRow {}

  record Month(YearMonth month) implements LogRow {}

  record Item(Entry entry) implements LogRow {}

  /** What stays the same while the rest of the row changes. */
  default Object key() {
    if (this instanceof Season season) {
      return season.year();
    }
    return this instanceof Month month ? month.month() : ((Item) this).entry().id();
  }
}
