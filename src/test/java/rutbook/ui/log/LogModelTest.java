package rutbook.ui.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rutbook.notebook.Bench;
import rutbook.notebook.Entry;
import rutbook.notebook.Moto;
import rutbook.notebook.MotoId;
import rutbook.notebook.MotoKind;
import rutbook.notebook.Notebook;
import rutbook.notebook.Report;
import rutbook.notebook.TravelUsed;

/** The Log as rows, and what its filter lets through. */
class LogModelTest {
  private static Moto trusted(String id, int trust) {
    Report report =
        new Report(List.of(), OptionalInt.of(trust), List.of(), TravelUsed.NOT_NOTED, false);
    return new Moto(new MotoId(id), MotoKind.MOTO, List.of(), report, Optional.empty(), "");
  }

  private static final Entry.Session MAY =
      Bench.session(
          "may",
          LocalDate.of(2026, 5, 2),
          Bench.HOLLOW,
          Bench.setup(),
          List.of(trusted("a", 4), trusted("b", 7)));
  private static final Entry.Session JUNE =
      Bench.session(
          "june", LocalDate.of(2026, 6, 2), Bench.DUNE, Bench.setup(), List.of(trusted("c", 8)));
  private static final Entry.Session NEXT_YEAR =
      Bench.session("next", LocalDate.of(2027, 6, 2), Bench.DUNE, Bench.setup(), List.of());
  private static final Notebook NOTEBOOK = Bench.notebook().with(JUNE).with(NEXT_YEAR).with(MAY);

  private static LogModel model(LogFilter filter) {
    return LogModel.of(NOTEBOOK, filter, entry -> entry.id().text());
  }

  private static LogRow item(Entry entry) {
    return new LogRow.Item(entry);
  }

  @Test
  void theNewestStandFirstUnderTheirSeasonsAndMonths() {
    Entry baseline = NOTEBOOK.entry(Bench.FIRST_BASELINE).orElseThrow();
    assertThat(model(LogFilter.ALL).rows())
        .containsExactly(
            new LogRow.Season(2027, 1),
            new LogRow.Month(YearMonth.of(2027, 6)),
            item(NEXT_YEAR),
            new LogRow.Season(2026, 3),
            new LogRow.Month(YearMonth.of(2026, 6)),
            item(JUNE),
            new LogRow.Month(YearMonth.of(2026, 5)),
            item(MAY),
            new LogRow.Month(YearMonth.from(baseline.day())),
            item(baseline));
  }

  @Test
  void trustGoesFromTheOldestToTheNewestAndLeavesOutWhoSaysNone() {
    assertThat(model(LogFilter.ALL).trust()).containsExactly(5.5, 8.0);
  }

  @Test
  void aFilterLeavesOnlyWhatFitsAllOfIt() {
    LogFilter onTheDune = LogFilter.ALL.on(Optional.of(Bench.DUNE));
    assertThat(model(onTheDune).shown()).isEqualTo(2);
    assertThat(model(onTheDune).total()).isEqualTo(4);
    assertThat(model(onTheDune.withText("JUNE")).rows())
        .contains(item(JUNE))
        .doesNotContain(item(NEXT_YEAR), item(MAY));
    assertThat(model(LogFilter.ALL.kind(Optional.of(Entry.Baseline.class))).shown()).isEqualTo(1);
    assertThat(model(LogFilter.ALL.of(Optional.of(new rutbook.notebook.BikeId("other")))).shown())
        .isZero();
  }

  @Test
  void everyWordHasToBeThereInAnyOrder() {
    LogFilter filter = LogFilter.ALL.withText("  Dune   kicks ");
    assertThat(filter.words()).containsExactly("dune", "kicks");
    assertThat(filter.finds("rear kicks at test dune")).isTrue();
    assertThat(filter.finds("rear kicks")).isFalse();
    assertThat(LogFilter.ALL.withText(" ").isAll()).isTrue();
  }

  @Test
  void aTextIsOnlyMadeWhereWordsAreLookedFor() {
    LogModel all =
        LogModel.of(
            NOTEBOOK,
            LogFilter.ALL,
            entry -> {
              throw new AssertionError(entry);
            });
    assertThat(all.shown()).isEqualTo(4);
  }

  @Test
  void rowsAreToldApartByWhatStaysTheSame() {
    List<LogRow> rows = model(LogFilter.ALL).rows();
    assertThat(Set.copyOf(rows.stream().map(LogRow::key).toList())).hasSize(rows.size());
  }

  @Test
  void aTrackIsOfSessionsOnly() {
    assertThat(
            LogFilter.ALL
                .on(Optional.of(Bench.HOLLOW))
                .fits(NOTEBOOK.entry(Bench.FIRST_BASELINE).orElseThrow()))
        .isFalse();
  }
}
