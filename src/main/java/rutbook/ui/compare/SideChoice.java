package rutbook.ui.compare;

import rutbook.compare.Choice;
import rutbook.compare.Subject;
import rutbook.notebook.Conditions;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.reasoning.RuleBook;
import rutbook.reasoning.StartAtTrack;

/**
 * Something that can be chosen for a side.
 *
 * @param key stays the same while the notebook changes
 */
record SideChoice(String key, Choice choice) {
  /** A side that was made, with the start that it was made of where it is one. */
  record Made(Subject subject, java.util.Optional<StartAtTrack> start) {
    private static Made of(Subject subject) {
      return new Made(subject, java.util.Optional.empty());
    }
  }

  Made made(Notebook notebook, Timeline timeline, RuleBook rules) {
    if (choice instanceof Choice.OfBaseline it) {
      return Made.of(Subject.of(timeline, it.baseline()));
    } else if (choice instanceof Choice.OfSession it) {
      return Made.of(Subject.of(timeline, it.session(), it.track()));
    } else if (choice instanceof Choice.OfMoto it) {
      return Made.of(Subject.of(timeline, it.session(), it.track(), it.moto()));
    } else if (choice instanceof Choice.BestOf it) {
      return Made.of(Subject.best(timeline, it.track()).orElseThrow());
    } else if (choice instanceof Choice.OfAdvice it) {
      return Made.of(Subject.of(timeline, it.advice()));
    } else if (choice instanceof Choice.OfHandedOver it) {
      return Made.of(Subject.of(timeline, it.handedOver()));
    } else if (choice instanceof Choice.StartAt it) {
      return start(notebook, timeline, rules, it.track());
    }
    return Made.of(Subject.now(timeline));
  }

  private Made start(Notebook notebook, Timeline timeline, RuleBook rules, Track track) {
    StartAtTrack start =
        StartAtTrack.of(notebook, timeline.bike().id(), track, Conditions.NOT_NOTED, rules);
    return new Made(
        Subject.planned(timeline, choice, start.on(timeline.now())), java.util.Optional.of(start));
  }
}
