package rutbook.cli;

import java.util.List;
import rutbook.compare.FullComparison;
import rutbook.compare.SettingHistory;
import rutbook.compare.TrackDifference;
import rutbook.compare.TrackDifference.Verdict;
import rutbook.compare.TwoTracks;
import rutbook.words.ComparedWords;
import rutbook.words.ExplainWords;

/** What a comparison says besides the two setups: laps, curves, two tracks, and history. */
final class ComparedPages {
  private final OpenedNotebook opened;
  private final Terminal terminal;
  private final ComparedWords words;

  ComparedPages(OpenedNotebook opened, Terminal terminal) {
    this.opened = opened;
    this.terminal = terminal;
    this.words = new ComparedWords(opened.phrases());
  }

  void more(FullComparison comparison) {
    explained(comparison);
    terminal.line(2, words.laps(comparison.laps()));
    if (comparison.laps().result().isPresent()) {
      terminal.line(4, words.noise(comparison.laps()));
    }
    words.reserve(comparison.curves()).forEach(line -> terminal.line(2, line));
    comparison.tracks().ifPresent(this::tracks);
  }

  private void explained(FullComparison comparison) {
    ExplainWords explaining = new ExplainWords(opened.phrases());
    if (!comparison.explained().isEmpty()) {
      terminal.line(2, explaining.title());
      explaining.sentences(comparison.explained()).forEach(line -> terminal.line(4, line));
    }
  }

  private void tracks(TwoTracks tracks) {
    terminal.heading(
        words.say("tracks", tracks.first().track().name(), tracks.second().track().name()));
    terminal.line(2, words.track(tracks.first()));
    terminal.line(2, words.track(tracks.second()));
    for (Verdict verdict :
        List.of(Verdict.CONSISTENT, Verdict.DRIFT, Verdict.CHANCE, Verdict.TOO_FEW)) {
      List<TrackDifference> rows = tracks.settings(verdict);
      if (!rows.isEmpty()) {
        terminal.line(2, words.say("group." + verdict.name()));
      }
      for (TrackDifference row : rows) {
        terminal.line(4, words.setting(row));
        if (verdict == Verdict.CONSISTENT || verdict == Verdict.DRIFT) {
          words.sure(row).forEach(line -> terminal.line(6, line));
        }
      }
    }
    List<String> same =
        tracks.settings(Verdict.SAME).stream()
            .map(row -> opened.readings().setting(row.setting()))
            .toList();
    if (!same.isEmpty()) {
      terminal.line(2, words.say("same", String.join(", ", same)));
    }
  }

  void history(SettingHistory history) {
    terminal.line(opened.comparing().setting(history.setting()));
    if (history.steps().size() < 2) {
      terminal.line(2, words.say("history.unmoved"));
    }
    words.steps(history).forEach(line -> terminal.line(2, line));
    history.marks().forEach(mark -> terminal.line(4, words.mark(history, mark)));
  }
}
