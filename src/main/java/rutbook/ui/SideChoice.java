package rutbook.ui;

import java.util.Optional;
import rutbook.compare.Choice;
import rutbook.compare.Subject;
import rutbook.notebook.Conditions;
import rutbook.notebook.Notebook;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.reasoning.RuleBook;
import rutbook.reasoning.StartAtTrack;

/**
 * A setup that can be chosen: for a side of a comparison, or to be handed over.
 *
 * @param key stays the same while the notebook changes
 */
public record SideChoice(String key, Choice choice) {
  /** A side that was made, with the start that it was made of where it is one. */
  public record Made(Subject subject, Optional<StartAtTrack> start) {
    private static Made of(Subject subject) {
      return new Made(subject, Optional.empty());
    }
  }

  /** The side itself; a start is reasoned from the notebook and the rules. */
  public Made made(Notebook notebook, Timeline timeline, RuleBook rules) {
    if (choice instanceof Choice.StartAt it) {
      return start(notebook, timeline, rules, it.track());
    } else if (choice instanceof Choice.OfAdvice it) {
      return Made.of(Subject.of(timeline, it.advice()));
    } else if (choice instanceof Choice.OfHandedOver it) {
      return Made.of(Subject.of(timeline, it.handedOver()));
    }
    return Made.of(onBike(timeline));
  }

  /** Whether it is, or was, on the bike: nothing planned, and no copy of what went away. */
  boolean isOnBike() {
    return !(choice instanceof Choice.StartAt
        || choice instanceof Choice.OfAdvice
        || choice instanceof Choice.OfHandedOver);
  }

  /** The setup of a choice that is, or was, on the bike; what is on it now for any other. */
  public Subject onBike(Timeline timeline) {
    if (choice instanceof Choice.OfBaseline it) {
      return Subject.of(timeline, it.baseline());
    } else if (choice instanceof Choice.OfSession it) {
      return Subject.of(timeline, it.session(), it.track());
    } else if (choice instanceof Choice.OfMoto it) {
      return Subject.of(timeline, it.session(), it.track(), it.moto());
    }
    return choice instanceof Choice.BestOf it ? Subject.of(timeline, it) : Subject.now(timeline);
  }

  private Made start(Notebook notebook, Timeline timeline, RuleBook rules, Track track) {
    StartAtTrack start =
        StartAtTrack.of(notebook, timeline.bike().id(), track, Conditions.NOT_NOTED, rules);
    return new Made(
        Subject.planned(timeline, choice, start.on(timeline.now())), Optional.of(start));
  }
}
