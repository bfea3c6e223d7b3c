package rutbook.json;

import java.util.List;
import java.util.Optional;
import rutbook.compare.SettingHistory;

/** What {@code history} answers: for each setting its steps, and what happened beside it. */
public final class HistoryAnswer {
  private record Moved(List<SettingHistory> settings) {}

  private static final Facts<SettingHistory.Step> STEP =
      Facts.line(SettingHistory.Step.class)
          .with("day", Texts.DAY, SettingHistory.Step::day)
          .with("entry", Ids.ENTRY, SettingHistory.Step::entry)
          .ifKnown("moto", Numbers.WHOLE, HistoryAnswer::moto)
          .with("reading", SettingFacts.READING, SettingHistory.Step::reading);

  private static final Facts<SettingHistory.Mark> MARK =
      Facts.line(SettingHistory.Mark.class)
          .with("day", Texts.DAY, SettingHistory.Mark::day)
          .with("kind", Words.of(SettingHistory.Kind.class), SettingHistory.Mark::kind)
          .ifKnown("entry", Ids.ENTRY, SettingHistory.Mark::entry)
          .ifKnown("reading", SettingFacts.READING, SettingHistory.Mark::reading);

  private static final Facts<SettingHistory> HISTORY =
      Facts.of(SettingHistory.class)
          .with("setting", SettingFacts.SETTING, SettingHistory::setting)
          .list("steps", STEP, SettingHistory::steps)
          .list("marks", MARK, SettingHistory::marks);

  private static final Facts<Moved> MOVED =
      Facts.of(Moved.class).list("settings", HISTORY, Moved::settings);

  private HistoryAnswer() {}

  public static Reply of(List<SettingHistory> histories) {
    return Reply.of("history", MOVED, new Moved(histories));
  }

  /** Counted from 1, as in a reference. */
  private static Optional<Integer> moto(SettingHistory.Step step) {
    return step.moto().isPresent() ? Optional.of(step.moto().getAsInt() + 1) : Optional.empty();
  }
}
