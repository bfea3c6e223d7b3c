package rutbook.ui;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rutbook.compare.Choice;
import rutbook.compare.Subject;
import rutbook.notebook.Entry;
import rutbook.notebook.Shelf;
import rutbook.notebook.Timeline;
import rutbook.notebook.Track;
import rutbook.words.CompareWords;
import rutbook.words.Phrases;

/**
 * A setup that can be chosen: for a side of a comparison, or to be handed over.
 *
 * @param key stays the same while the notebook changes
 */
public record SideOption(String key, Choice choice, String said) {

  /** Now, baselines, the best of each track, then sessions with their motos; newest first. */
  public static List<SideOption> all(Shelf shelf, Timeline timeline, Phrases phrases) {
    CompareWords words = new CompareWords(phrases);
    List<SideOption> options = new ArrayList<>();
    add(options, "now", new Choice.Now(), words, phrases);
    for (Entry.Baseline baseline : newestFirst(timeline.entries(Entry.Baseline.class))) {
      add(options, "baseline:" + baseline.id(), new Choice.OfBaseline(baseline), words, phrases);
    }
    for (Track track : shelf.tracks()) {
      Subject.best(timeline, track)
          .ifPresent(best -> add(options, "best:" + track.id(), best.choice(), words, phrases));
    }
    for (Entry.Session session : newestFirst(timeline.sessions())) {
      Track track = shelf.track(session.track()).orElseThrow();
      add(options, "session:" + session.id(), new Choice.OfSession(session, track), words, phrases);
      for (int i = 0; i < session.motos().size(); i++) {
        Choice moto = new Choice.OfMoto(session, track, i);
        add(options, "moto:" + session.id() + "#" + i, moto, words, phrases);
      }
    }
    return options;
  }

  private static void add(
      List<SideOption> options, String key, Choice choice, CompareWords words, Phrases phrases) {
    options.add(new SideOption(key, choice, phrases.sentence(words.choice(choice))));
  }

  private static <T> List<T> newestFirst(List<T> entries) {
    List<T> reversed = new ArrayList<>(entries);
    Collections.reverse(reversed);
    return reversed;
  }

  public static Optional<SideOption> find(List<SideOption> options, String key) {
    return options.stream().filter(option -> option.key().equals(key)).findFirst();
  }

  /** The best of two tracks where two were ridden, otherwise the baseline and now. */
  public static List<SideOption> firstChoice(List<SideOption> options) {
    List<SideOption> best =
        options.stream().filter(option -> option.key().startsWith("best:")).limit(2).toList();
    if (best.size() == 2) {
      return best;
    }
    SideOption now = options.get(0);
    return List.of(
        options.stream()
            .filter(option -> option.key().startsWith("baseline:"))
            .findFirst()
            .orElse(now),
        now);
  }

  public Subject subject(Timeline timeline) {
    if (choice instanceof Choice.OfBaseline it) {
      return Subject.of(timeline, it.baseline());
    } else if (choice instanceof Choice.OfSession it) {
      return Subject.of(timeline, it.session(), it.track());
    } else if (choice instanceof Choice.OfMoto it) {
      return Subject.of(timeline, it.session(), it.track(), it.moto());
    } else if (choice instanceof Choice.BestOf it) {
      return Subject.best(timeline, it.track()).orElseThrow();
    }
    return Subject.now(timeline);
  }
}
