package rutbook.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import rutbook.imports.LapImport;
import rutbook.imports.NotTaken;
import rutbook.imports.SetupImport;

/** What {@code import} answers: what each column was taken for, what is taken, and what is not. */
public final class ImportAnswer {
  private record Taken<R>(String mapping, boolean dryRun, List<R> rows, List<NotTaken> not) {}

  private static final Facts<NotTaken> NOT =
      Facts.line(NotTaken.class)
          .with("line", Numbers.WHOLE, NotTaken::line)
          .with("why", Words.of(NotTaken.Why.class), NotTaken::why)
          .note("cell", NotTaken::cell)
          .note("of", NotTaken::of);

  private static final Facts<LapImport.Row> LAP =
      Facts.line(LapImport.Row.class)
          .with("line", Numbers.WHOLE, LapImport.Row::line)
          .with("seconds", Numbers.DECIMAL, row -> BigDecimal.valueOf(row.millis(), 3));

  private static final Facts<SetupImport.Row> SETUP =
      Facts.line(SetupImport.Row.class)
          .with("line", Numbers.WHOLE, SetupImport.Row::line)
          .with("day", Texts.DAY, SetupImport.Row::day)
          .with("track", Texts.TEXT, row -> row.track().name())
          .with("found", Numbers.WHOLE, row -> row.beyond().size());

  private ImportAnswer() {}

  public static Reply of(String mapping, boolean dryRun, LapImport found) {
    return reply("laps", LAP, new Taken<>(mapping, dryRun, found.rows(), found.notTaken()));
  }

  public static Reply of(String mapping, boolean dryRun, SetupImport found) {
    return reply("setups", SETUP, new Taken<>(mapping, dryRun, found.rows(), found.notTaken()));
  }

  @SuppressWarnings("unchecked") // facts only read their own kind of rows
  private static <R> Reply reply(String rows, Facts<R> row, Taken<R> taken) {
    Facts<Taken<R>> facts =
        Facts.of((Class<Taken<R>>) (Class<?>) Taken.class)
            .with("mapping", Texts.TEXT, Taken::mapping)
            .flag("dryRun", Taken::dryRun)
            .ifKnown("laps", Facts.listOf(row, false), it -> only(rows.equals("laps"), it.rows()))
            .ifKnown(
                "setups", Facts.listOf(row, false), it -> only(rows.equals("setups"), it.rows()))
            .list("notTaken", NOT, Taken::not);
    return Reply.of("import", facts, taken);
  }

  private static <R> Optional<List<R>> only(boolean these, List<R> rows) {
    return these ? Optional.of(rows) : Optional.empty();
  }
}
