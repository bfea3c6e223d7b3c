package rutbook.cli;

import rutbook.notebook.Track;
import rutbook.reasoning.Bother;
import rutbook.reasoning.NextChange;
import rutbook.reasoning.StartAtTrack;
import rutbook.reasoning.Suggestion;
import rutbook.words.ReasoningWords;
import rutbook.words.StartWords;

/** The next change as lines in a terminal. */
final class NextPages {
  private final OpenedNotebook opened;
  private final Terminal terminal;
  private final ReasoningWords words;

  NextPages(OpenedNotebook opened, Terminal terminal) {
    this.opened = opened;
    this.terminal = terminal;
    this.words = new ReasoningWords(opened.phrases());
  }

  void next(NextChange next) {
    if (!next.gates().isEmpty()) {
      terminal.line(words.gatesHeading());
      next.gates().forEach(card -> terminal.line(2, words.gate(card)));
    }
    if (next.kind() != NextChange.Kind.NOTHING_RIDDEN) {
      terminal.line(words.nowHeading(next.now().stream().anyMatch(Bother::isFelt)));
      next.now().stream()
          .filter(Bother::isFelt)
          .forEach(each -> terminal.line(2, words.bother(each)));
    }
    next.ask().forEach(each -> terminal.line(2, words.ask(each)));
    answer(next, false);
  }

  /** What to start with at a track. */
  void start(Track track, StartAtTrack start) {
    StartWords starting = new StartWords(opened.phrases());
    terminal.line(starting.title(track.name()));
    terminal.line(2, starting.like(start, track, opened.notebook().shelf()));
    start.settings().forEach(each -> terminal.line(2, starting.setting(each)));
    if (start.like().isPresent()) {
      terminal.line(starting.how());
    }
    terminal.line(starting.caution());
  }

  /** The answer alone, without its reasons. */
  void brief(NextChange next) {
    answer(next, true);
  }

  private void answer(NextChange next, boolean brief) {
    terminal.line(words.kind(next.kind()));
    if (next.kind() == NextChange.Kind.LEAVE_ALONE && !next.suggestions().isEmpty()) {
      terminal.line(words.finerHeading());
    }
    words.trust(next).ifPresent(terminal::line);
    int number = 0;
    for (Suggestion each : next.suggestions()) {
      number++;
      terminal.row(2, 4, number + ".", words.suggestion(each));
      terminal.line(6, words.chance(each));
      if (!brief) {
        words.reasons(each).forEach(reason -> terminal.line(6, reason));
        words.tells(each).ifPresent(said -> terminal.line(6, said));
      }
    }
    if (number > 0) {
      terminal.line(words.howToTest());
    }
  }
}
