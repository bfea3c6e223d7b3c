package rutbook.share;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rutbook.compare.Subject;
import rutbook.notebook.Dice;
import rutbook.notebook.HandOverId;
import rutbook.notebook.Notebook;
import rutbook.notebook.Reading;
import rutbook.notebook.Setting;
import rutbook.notebook.Shared;
import rutbook.notebook.Sheet;
import rutbook.notebook.Timeline;

/** Setup files of notebooks, for tests: some thrown by dice, some chosen. */
public final class SetupFiles {
  public static final LocalDate DAY = LocalDate.of(2026, 11, 1);

  private SetupFiles() {}

  public static HandOver handOver(Notebook notebook, Set<Shared> shared) {
    return new HandOver(new HandOverId("hand-over-1"), notebook.id(), DAY, shared, "What next?");
  }

  /** What is on the first bike now, every session of it, and its baseline. */
  public static SetupFile whole(Notebook notebook, Set<Shared> shared) {
    Timeline timeline = Timeline.of(notebook, notebook.bikes().get(0).id());
    return Packing.of(
        notebook, timeline, chosen(notebook, timeline), handOver(notebook, shared), by());
  }

  private static Optional<String> by() {
    return Optional.empty();
  }

  /** At most twenty, sessions of the rider of the newest alone. */
  public static List<Subject> chosen(Notebook notebook, Timeline timeline) {
    List<Subject> chosen = new ArrayList<>(List.of(Subject.now(timeline)));
    timeline.baseline().ifPresent(baseline -> chosen.add(Subject.of(timeline, baseline)));
    var sessions = timeline.sessions();
    for (var session : sessions) {
      if (chosen.size() < SetupFile.MOST_SETUPS - 1
          && session.rider().equals(sessions.get(0).rider())) {
        var track = notebook.shelf().track(session.track()).orElseThrow();
        chosen.add(Subject.of(timeline, session, track));
        if (!session.motos().isEmpty()) {
          chosen.add(Subject.of(timeline, session, track, session.motos().size() - 1));
        }
      }
    }
    return chosen;
  }

  /** The file with proposals inside the limits for about half of its settings, and advice. */
  public static SetupFile advised(SetupFile file, Dice dice) {
    Sheet sheet = file.sheet();
    CoachPart coach = CoachPart.of(dice.name()).advising(dice.note());
    for (Setting setting : sheet.settings()) {
      Reading to = dice.chosen(sheet, setting);
      if (dice.once(2) && to.isKnown()) {
        coach = coach.with(new Suggested(setting.id(), to, dice.note()));
      }
    }
    return file.with(coach.handedBackOn(DAY.plusDays(3)));
  }
}
